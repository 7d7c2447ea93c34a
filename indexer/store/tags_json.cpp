#include "indexer/store/tags_json.h"

#include <nlohmann/json.hpp>

#include "indexer/store/database.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

template <class Row>
Json number_or_null(std::optional<Id<Row>> id) {
    return id ? Json(id->value) : Json();
}

template <class Word>
Json word_or_null(std::optional<Word> value) {
    return value ? Json(word(*value)) : Json();
}

template <class Row>
void take_id(const Json& json, std::optional<Id<Row>>& id) {
    if (!json.is_null()) id = Id<Row>{json.get<std::int64_t>()};
}

template <class Word, class Parse>
void take_word(const Json& json, std::optional<Word>& value, Parse parse) {
    if (json.is_null()) return;
    const auto text = json.get<std::string>();
    value = parse(text);
    if (!value) {
        throw StoreError("The library's history holds '" + text +
                         "', which this version does not know: install the newest version.");
    }
}

Tags tags_in(const Json& json) {
    Tags tags;
    take_id(json.at("sitting"), tags.sitting);
    tags.placed_by_hand = json.at("placed by hand").get<bool>();
    take_id(json.at("look"), tags.look);
    take_word(json.at("stage"), tags.stage, parse_stage);
    take_word(json.at("angle"), tags.angle, parse_angle);
    tags.mirrored = json.at("mirrored").get<bool>();
    for (const Json& client : json.at("shown")) {
        tags.shown.push_back(ClientId{client.get<std::int64_t>()});
    }
    tags.note = json.at("note").get<std::string>();
    tags.accepted_because = json.at("accepted because").get<std::string>();
    return tags;
}

}  // namespace

std::string tags_json(const Tags& tags) {
    Json shown = Json::array();
    for (const ClientId client : tags.shown) shown.push_back(client.value);
    return Json{{"sitting", number_or_null(tags.sitting)},
                {"placed by hand", tags.placed_by_hand},
                {"look", number_or_null(tags.look)},
                {"stage", word_or_null(tags.stage)},
                {"angle", word_or_null(tags.angle)},
                {"mirrored", tags.mirrored},
                {"shown", shown},
                {"note", tags.note},
                {"accepted because", tags.accepted_because}}
        .dump();
}

Tags parse_tags_json(std::string_view json) {
    try {
        return tags_in(Json::parse(json));
    } catch (const Json::exception& error) {
        throw StoreError(std::string("The library's history is damaged (") + error.what() +
                         "), and this change cannot be undone or done again.");
    }
}

}  // namespace quarterturn
