#include <nlohmann/json.hpp>

#include "indexer/looks/exported_record.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

template <class Value>
Json word_or_null(const std::optional<Value>& value) {
    return value ? Json(word(*value)) : Json();
}

Json wedding_json(const std::optional<Wedding>& wedding) {
    if (!wedding) return nullptr;
    return {{"name", wedding->name},
            {"date", iso_text(wedding->date)},
            {"venue", wedding->venue},
            {"ready_by", wedding->ready_by}};
}

Json sittings_json(const std::vector<Sitting>& sittings) {
    Json list = Json::array();
    for (const Sitting& sitting : sittings) {
        list.push_back({{"kind", word(sitting.kind)},
                        {"starts", iso_text(sitting.starts)},
                        {"ends", iso_text(sitting.ends)}});
    }
    return list;
}

Json shots_json(const ExportedRecord& record) {
    Json list = Json::array();
    for (const CoverageLine& line : record.state.coverage.lines) {
        Json shot{{"stage", word(line.wanted.shot.stage)},
                  {"angle", word(line.wanted.shot.angle)},
                  {"need", word(line.wanted.need)},
                  {"verdict", word(line.verdict)},
                  {"photo", nullptr},
                  {"waived_because", line.waived_because}};
        for (const ExportedPhoto& exported : record.photos) {
            if (line.photo == exported.photo.id) shot["photo"] = exported.file;
        }
        list.push_back(std::move(shot));
    }
    return list;
}

Json taken_json(const std::optional<CaptureTime>& taken) {
    return taken ? Json(iso_text(taken->local, taken->fraction_digits)) : Json();
}

Json offset_json(const std::optional<CaptureTime>& taken) {
    return taken && taken->utc_offset ? Json(offset_text(*taken->utc_offset)) : Json();
}

Json flaws_json(const std::vector<Flaw>& flaws) {
    Json list = Json::array();
    for (const Flaw flaw : flaws) list.push_back(word(flaw));
    return list;
}

Json photo_json(const ExportedPhoto& exported) {
    const Photo& photo = exported.photo;
    return {{"file", exported.file},
            {"original_name", photo.file.name},
            {"sha256", photo.file.sha256},
            {"stage", word_or_null(photo.tags.stage)},
            {"angle", word_or_null(photo.tags.angle)},
            {"mirrored", photo.tags.mirrored},
            {"taken", taken_json(photo.file.taken)},
            {"utc_offset", offset_json(photo.file.taken)},
            {"moment", photo.moment ? Json(iso_text(*photo.moment)) : Json()},
            {"flaws", flaws_json(photo.flaws)},
            {"accepted_because", photo.tags.accepted_because},
            {"also_shown", exported.also_shown},
            {"note", photo.tags.note}};
}

Json photos_json(const std::vector<ExportedPhoto>& photos) {
    Json list = Json::array();
    for (const ExportedPhoto& photo : photos) list.push_back(photo_json(photo));
    return list;
}

}  // namespace

std::string record_json(const ExportedRecord& record) {
    const LookState& state = record.state;
    const Json json{
        {"look", {{"name", state.look.name}, {"worn", word(state.look.worn)}}},
        {"client", {{"name", state.client.name}, {"role", record.role}}},
        {"wedding", wedding_json(state.wedding)},
        {"sittings", sittings_json(record.sittings)},
        {"business_name", record.business_name},
        {"business_line", record.business_line},
        {"signed_at", iso_text(state.sign_off->signed_at)},
        {"recipe", {{"file", "recipe.json"}, {"sha256", state.sign_off->seal.recipe_sha256}}},
        {"shots", shots_json(record)},
        {"photos", photos_json(record.photos)}};
    return json.dump(2) + "\n";
}

}  // namespace quarterturn
