#include "app/qturn/to_json.h"

#include <string>

namespace quarterturn {
namespace {

using nlohmann::json;

template <class Value>
json word_or_null(const std::optional<Value>& value) {
    return value ? json(std::string(word(*value))) : json(nullptr);
}

template <class Row>
json number_or_null(const std::optional<Id<Row>>& id) {
    return id ? json(id->value) : json(nullptr);
}

json wedding_name(const std::optional<WeddingId>& id, const Names& names) {
    return id ? json(names.wedding(*id)) : json(nullptr);
}

json to_json(const Suggestion& suggestion) {
    return {{"angle", word_or_null(suggestion.angle)},
            {"angle_source", suggestion.angle_source},
            {"stage", word_or_null(suggestion.stage)},
            {"stage_source", suggestion.stage_source}};
}

json to_json(const Measures& measures) {
    return {{"focus", measures.focus},
            {"motion", measures.motion},
            {"mean_light", measures.mean_light},
            {"clipped_shadows", measures.clipped_shadows},
            {"clipped_highlights", measures.clipped_highlights}};
}

// What the file says of its time, and that time with its device's clock shift.
json time_json(const Photo& photo) {
    const auto& taken = photo.file.taken;
    const int digits = taken ? taken->fraction_digits : 0;
    const bool has_offset = taken && taken->utc_offset;
    return {{"taken", taken ? json(iso_text(taken->local, digits)) : json(nullptr)},
            {"corrected", photo.moment ? json(iso_text(*photo.moment, digits)) : json(nullptr)},
            {"utc_offset", has_offset ? json(offset_text(*taken->utc_offset)) : json(nullptr)}};
}

json file_json(const FileFacts& file, const Names& names) {
    return {{"name", file.name},
            {"path", file.path},
            {"sha256", file.sha256},
            {"bytes", file.bytes},
            {"width", file.width},
            {"height", file.height},
            {"device", file.device ? json(names.device(*file.device)) : json(nullptr)},
            {"device_id", number_or_null(file.device)}};
}

json tags_json(const Tags& tags, const Names& names) {
    auto shown = json::array();
    for (const ClientId id : tags.shown) shown.push_back(names.client(id));
    return {{"sitting", number_or_null(tags.sitting)},
            {"placed_by_hand", tags.placed_by_hand},
            {"look", tags.look ? json(names.look(*tags.look)) : json(nullptr)},
            {"look_id", number_or_null(tags.look)},
            {"stage", word_or_null(tags.stage)},
            {"angle", word_or_null(tags.angle)},
            {"mirrored", tags.mirrored},
            {"shown", shown},
            {"note", tags.note},
            {"accepted_because", tags.accepted_because}};
}

}  // namespace

json to_json(const Client& client) {
    return {{"id", client.id.value}, {"name", client.name}, {"note", client.note}};
}

json to_json(const Wedding& wedding, const Names& names) {
    auto party = json::array();
    for (const PartyMember& member : wedding.party) {
        party.push_back({{"client", names.client(member.client)},
                         {"client_id", member.client.value},
                         {"role", member.role}});
    }
    return {{"id", wedding.id.value},         {"name", wedding.name},
            {"date", iso_text(wedding.date)}, {"venue", wedding.venue},
            {"ready_by", wedding.ready_by},   {"party", party}};
}

json to_json(const Sitting& sitting, const Names& names) {
    return {{"id", sitting.id.value},
            {"kind", std::string(word(sitting.kind))},
            {"client", names.client(sitting.client)},
            {"client_id", sitting.client.value},
            {"wedding", wedding_name(sitting.wedding, names)},
            {"wedding_id", number_or_null(sitting.wedding)},
            {"starts", iso_text(sitting.starts)},
            {"ends", iso_text(sitting.ends)},
            {"note", sitting.note}};
}

json to_json(const Look& look, const Names& names) {
    auto sittings = json::array();
    for (const SittingId id : look.sittings) sittings.push_back(id.value);
    return {{"id", look.id.value},
            {"name", look.name},
            {"client", names.client(look.client)},
            {"client_id", look.client.value},
            {"wedding", wedding_name(look.wedding, names)},
            {"wedding_id", number_or_null(look.wedding)},
            {"worn", std::string(word(look.worn))},
            {"sittings", sittings}};
}

json to_json(const Device& device) {
    return {{"id", device.id.value},
            {"make", device.make},
            {"model", device.model},
            {"serial", device.serial},
            {"clock_shift_seconds", device.clock_shift.count()}};
}

json to_json(const Photo& photo, const Names& names) {
    json object{{"id", photo.id.value},
                {"flaws", to_json(photo.flaws)},
                {"suggestion", to_json(photo.suggestion)},
                {"measures", to_json(photo.measures)}};
    object.update(file_json(photo.file, names));
    object.update(time_json(photo));
    object.update(tags_json(photo.tags, names));
    return object;
}

json to_json(const CoverageLine& line) {
    return {{"stage", std::string(word(line.wanted.shot.stage))},
            {"angle", std::string(word(line.wanted.shot.angle))},
            {"need", std::string(word(line.wanted.need))},
            {"verdict", std::string(word(line.verdict))},
            {"photo_id", number_or_null(line.photo)},
            {"flaws", to_json(line.flaws)},
            {"waived_because", line.waived_because}};
}

json to_json(const ShotList& list) {
    auto lines = json::array();
    for (const ShotLine& line : list) {
        lines.push_back({{"stage", std::string(word(line.shot.stage))},
                         {"angle", std::string(word(line.shot.angle))},
                         {"need", std::string(word(line.need))}});
    }
    return lines;
}

json to_json(const std::vector<Flaw>& flaws) {
    auto words = json::array();
    for (const Flaw flaw : flaws) words.push_back(std::string(word(flaw)));
    return words;
}

json short_json(const Photo& photo) {
    return {{"id", photo.id.value}, {"name", photo.file.name}};
}

json short_list_json(const std::vector<Photo>& photos) {
    auto list = json::array();
    for (const Photo& photo : photos) list.push_back(short_json(photo));
    return list;
}

}  // namespace quarterturn
