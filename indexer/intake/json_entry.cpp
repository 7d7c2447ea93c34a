#include "indexer/intake/json_entry.h"

namespace quarterturn {

JsonEntry::JsonEntry(const nlohmann::json& json, std::string where)
    : json_(json), where_(std::move(where)) {
    if (!json.is_object()) wrong("is no object in braces");
}

void JsonEntry::wrong(const std::string& what) const {
    throw StoreError(where_ + ' ' + what +
                     ". Correct that and load the file again; nothing of it "
                     "was taken over.");
}

bool JsonEntry::has(const char* field) const {
    return json_.contains(field) && !json_.at(field).is_null();
}

std::string JsonEntry::text(const char* field) const {
    if (!has(field)) return {};
    if (!json_.at(field).is_string()) wrong(std::string{"has a '"} + field + "' that is no text");
    return json_.at(field).get<std::string>();
}

std::string JsonEntry::needed(const char* field) const {
    std::string value = text(field);
    if (value.empty()) wrong(std::string{"lacks its '"} + field + "'");
    return value;
}

bool JsonEntry::flag(const char* field) const {
    if (!has(field)) return false;
    if (!json_.at(field).is_boolean()) {
        wrong(std::string{"has a '"} + field + "' that is neither true nor false");
    }
    return json_.at(field).get<bool>();
}

std::vector<std::string> JsonEntry::texts(const char* field) const {
    std::vector<std::string> found;
    if (!has(field)) return found;
    if (!json_.at(field).is_array()) wrong(std::string{"has a '"} + field + "' that is no list");
    for (const auto& item : json_.at(field)) {
        if (!item.is_string()) wrong(std::string{"lists in '"} + field + "' what is no text");
        found.push_back(item.get<std::string>());
    }
    return found;
}

std::vector<JsonEntry> JsonEntry::entries(const char* field, const std::string& one) const {
    std::vector<JsonEntry> found;
    if (!has(field)) return found;
    if (!json_.at(field).is_array()) wrong(std::string{"has a '"} + field + "' that is no list");
    for (const auto& item : json_.at(field)) {
        const std::string name = one + ' ' + std::to_string(found.size() + 1);
        found.emplace_back(item, name + " of " + where_);
    }
    return found;
}

nlohmann::json parse_json(std::string_view text) try {
    return nlohmann::json::parse(text);
} catch (const nlohmann::json::parse_error& error) {
    throw StoreError("The file is no JSON from byte " + std::to_string(error.byte) +
                     " on: correct it and load it again. Nothing of it was taken over.");
}

}  // namespace quarterturn
