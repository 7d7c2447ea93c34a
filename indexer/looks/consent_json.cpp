#include "indexer/looks/consent_json.h"

namespace quarterturn {
namespace {

nlohmann::json date_or_null(const std::optional<Date>& date) {
    return date ? nlohmann::json(iso_text(*date)) : nlohmann::json();
}

}  // namespace

nlohmann::json to_json(const ConsentPaper& paper) {
    return {{"id", paper.id.value}, {"name", paper.name},
            {"path", paper.path},   {"sha256", paper.sha256},
            {"bytes", paper.bytes}, {"added_at", iso_text(paper.added_at)}};
}

nlohmann::json to_json(const ConsentEntry& entry) {
    const bool granted = entry.said == ConsentSaid::granted;
    return {{"id", entry.id.value},
            {"client_id", entry.client.value},
            {"use", word(entry.use)},
            {"said", word(entry.said)},
            {"said_on", iso_text(entry.said_on)},
            {"shown", granted ? nlohmann::json(word(entry.shown)) : nlohmann::json()},
            {"from", date_or_null(entry.from)},
            {"until", date_or_null(entry.until)},
            {"how", word(entry.how)},
            {"giver", word(entry.giver)},
            {"guardian", entry.guardian},
            {"witness", entry.witness},
            {"age", entry.age ? nlohmann::json(word(*entry.age)) : nlohmann::json()},
            {"note", entry.note},
            {"recorded_at", iso_text(entry.recorded_at)},
            {"papers", json_of_each(entry.papers)}};
}

nlohmann::json to_json(const Exported& exported) {
    auto under = nlohmann::json::array();
    for (const ConsentId id : exported.under) under.push_back(id.value);
    const auto& down = exported.taken_down;
    return {{"id", exported.id.value},
            {"photo_id", exported.photo.value},
            {"photo", exported.photo_name},
            {"photo_sha256", exported.photo_sha256},
            {"use", word(exported.use)},
            {"at", iso_text(exported.at)},
            {"file", exported.file},
            {"sha256", exported.sha256},
            {"bytes", exported.bytes},
            {"hair_only", exported.hair_only},
            {"under", under},
            {"places", exported.places},
            {"taken_down_on", down ? nlohmann::json(iso_text(down->on)) : nlohmann::json()},
            {"taken_down_note", down ? nlohmann::json(down->note) : nlohmann::json()}};
}

}  // namespace quarterturn
