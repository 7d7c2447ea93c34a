#include "indexer/looks/exported_record.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

// File names of other systems may be no UTF-8; those bytes are left out.
std::string as_utf8(const std::string& text) {
    const auto ignore = Json::error_handler_t::ignore;
    return Json::parse(Json(text).dump(-1, ' ', false, ignore)).get<std::string>();
}

bool portable(char c) {
    constexpr std::string_view refused_somewhere = R"(/\:*?"<>|%)";
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x20 && byte != 0x7f && refused_somewhere.find(c) == std::string_view::npos;
}

std::string numbered(const std::string& name, int number) {
    const auto dot = name.rfind('.');
    const auto end = dot == std::string::npos || dot == 0 ? name.size() : dot;
    return name.substr(0, end) + " (" + std::to_string(number) + ")" + name.substr(end);
}

// No two alike, also on disks that do not tell capitals apart.
std::string unlike_others(const std::string& name, std::set<std::string>& taken) {
    std::string candidate = name;
    for (int number = 2; !taken.insert(folded(candidate)).second; ++number) {
        candidate = numbered(name, number);
    }
    return candidate;
}

std::vector<std::string> names_of(Library& library, const std::vector<ClientId>& clients) {
    std::vector<std::string> names;
    for (const ClientId id : clients) {
        if (const auto client = library.clients().find(id)) names.push_back(client->name);
    }
    return names;
}

std::vector<ExportedPhoto> exported_photos(Library& library, const LookState& state) {
    std::set<std::string> taken;
    std::vector<ExportedPhoto> photos;
    for (const Photo& photo : state.photos) {
        photos.push_back({photo, "photos/" + unlike_others(portable_name(photo.file.name), taken),
                          names_of(library, photo.tags.shown)});
        photos.back().photo.file.name = as_utf8(photo.file.name);
    }
    return photos;
}

}  // namespace

std::string portable_name(const std::string& name) {
    std::string result = as_utf8(name);
    std::replace_if(
        result.begin(), result.end(), [](char c) { return !portable(c); }, '_');
    const auto last = result.find_last_not_of(" .");
    if (last == std::string::npos) return "photo";
    return result.substr(0, last + 1);
}

ExportedRecord exported_record(Library& library, LookState state) {
    ExportedRecord record;
    if (state.wedding) record.role = role_in(*state.wedding, state.look.client);
    for (const SittingId id : state.look.sittings) {
        if (const auto sitting = library.sittings().find(id)) record.sittings.push_back(*sitting);
    }
    record.business_name = library.settings().get(business_name_setting).value_or("");
    record.business_line = library.settings().get(business_line_setting).value_or("");
    record.photos = exported_photos(library, state);
    record.state = std::move(state);
    return record;
}

}  // namespace quarterturn
