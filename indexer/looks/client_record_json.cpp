#include <nlohmann/json.hpp>

#include "indexer/looks/client_record.h"
#include "indexer/looks/consent_json.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

template <class Row>
Json number_or_null(const std::optional<Id<Row>>& id) {
    return id ? Json(id->value) : Json();
}

template <class Word>
Json word_or_null(const std::optional<Word>& value) {
    return value ? Json(word(*value)) : Json();
}

Json time_or_null(const std::optional<LocalTime>& time) {
    return time ? Json(iso_text(*time)) : Json();
}

Json weddings_json(const ClientRecord& record) {
    Json list = Json::array();
    for (const Wedding& wedding : record.weddings) {
        list.push_back({{"id", wedding.id.value},
                        {"name", wedding.name},
                        {"date", iso_text(wedding.date)},
                        {"venue", wedding.venue},
                        {"ready_by", wedding.ready_by},
                        {"role", role_in(wedding, record.client.id)}});
    }
    return list;
}

Json sittings_json(const std::vector<Sitting>& sittings) {
    Json list = Json::array();
    for (const Sitting& sitting : sittings) {
        list.push_back({{"id", sitting.id.value},
                        {"kind", word(sitting.kind)},
                        {"wedding_id", number_or_null(sitting.wedding)},
                        {"starts", iso_text(sitting.starts)},
                        {"ends", iso_text(sitting.ends)},
                        {"note", sitting.note}});
    }
    return list;
}

Json recipes_json(const std::vector<RecipeRevision>& revisions) {
    Json list = Json::array();
    for (const RecipeRevision& revision : revisions) {
        list.push_back({{"revision", revision.number},
                        {"saved_at", iso_text(revision.saved_at)},
                        {"sitting_id", number_or_null(revision.sitting)},
                        {"recipe", Json::parse(recipe_json(revision.recipe))}});
    }
    return list;
}

Json draft_json(const std::optional<RecipeDraft>& draft) {
    if (!draft) return {};
    return {{"kept_at", iso_text(draft->kept_at)},
            {"recipe", Json::parse(recipe_json(draft->recipe))}};
}

Json sign_offs_json(const std::vector<SignOff>& sign_offs) {
    Json list = Json::array();
    for (const SignOff& sign_off : sign_offs) {
        list.push_back({{"signed_at", iso_text(sign_off.signed_at)},
                        {"reopened_at", time_or_null(sign_off.reopened_at)},
                        {"reopened_because", sign_off.reopened_because}});
    }
    return list;
}

Json looks_json(const std::vector<LookRecord>& looks) {
    Json list = Json::array();
    for (const LookRecord& each : looks) {
        Json sittings = Json::array();
        for (const SittingId sitting : each.look.sittings) sittings.push_back(sitting.value);
        list.push_back({{"id", each.look.id.value},
                        {"name", each.look.name},
                        {"worn", word(each.look.worn)},
                        {"wedding_id", number_or_null(each.look.wedding)},
                        {"sitting_ids", sittings},
                        {"recipes", recipes_json(each.recipes)},
                        {"draft", draft_json(each.draft)},
                        {"sign_offs", sign_offs_json(each.sign_offs)}});
    }
    return list;
}

Json photos_json(const std::vector<Photo>& photos) {
    Json list = Json::array();
    for (const Photo& photo : photos) {
        list.push_back({{"id", photo.id.value},
                        {"name", photo.file.name},
                        {"path", photo.file.path},
                        {"sha256", photo.file.sha256},
                        {"moment", time_or_null(photo.moment)},
                        {"sitting_id", number_or_null(photo.tags.sitting)},
                        {"look_id", number_or_null(photo.tags.look)},
                        {"stage", word_or_null(photo.tags.stage)},
                        {"angle", word_or_null(photo.tags.angle)},
                        {"mirrored", photo.tags.mirrored},
                        {"note", photo.tags.note}});
    }
    return list;
}

// Named only: they are somebody else's work.
Json brought_json(const std::vector<Inspiration>& brought) {
    Json list = Json::array();
    for (const Inspiration& picture : brought) {
        list.push_back({{"name", picture.name}, {"kept_at", iso_text(picture.kept_at)}});
    }
    return list;
}

}  // namespace

std::string client_record_json(const ClientRecord& record) {
    const Json json{{"client",
                     {{"id", record.client.id.value},
                      {"name", record.client.name},
                      {"note", record.client.note}}},
                    {"weddings", weddings_json(record)},
                    {"sittings", sittings_json(record.sittings)},
                    {"looks", looks_json(record.looks)},
                    {"photos", photos_json(record.photos)},
                    {"consents", json_of_each(record.consents)},
                    {"exports", json_of_each(record.exports)},
                    {"brought_pictures", brought_json(record.brought)}};
    // A photo's name may hold any bytes.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace quarterturn
