#pragma once
// Reading an object of a JSON file so that whatever is wrong in it ends as a sentence that names
// the entry and the field. All functions throw StoreError.

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "indexer/store/database.h"

namespace quarterturn {

class JsonEntry {
  public:
    // `json` must outlive the entry. `where` names it: "client 2", "the file".
    JsonEntry(const nlohmann::json& json, std::string where);

    [[noreturn]] void wrong(const std::string& what) const;

    bool has(const char* field) const;            // null counts as absent
    std::string text(const char* field) const;    // empty when absent
    std::string needed(const char* field) const;  // refuses an empty text too
    bool flag(const char* field) const;           // false when absent
    std::vector<std::string> texts(const char* field) const;
    // Each is named after `one` and counted from 1; none when absent.
    std::vector<JsonEntry> entries(const char* field, const std::string& one) const;
    const nlohmann::json& field(const char* name) const { return json_.at(name); }

    // A needed text that `parse` understands; `such_as` shows a right one.
    template <class Parse>
    auto parsed(const char* field, Parse parse, const std::string& such_as) const {
        const std::string value = needed(field);
        const auto result = parse(value);
        if (!result) wrong(std::string{"has the "} + field + " '" + value + "'; write " + such_as);
        return *result;
    }

    // As parsed(), and nothing when the field is absent.
    template <class Parse>
    auto parsed_if_there(const char* field, Parse parse, const std::string& such_as) const {
        return has(field) ? std::optional{parsed(field, parse, such_as)} : std::nullopt;
    }

  private:
    const nlohmann::json& json_;
    std::string where_;
};

// Throws StoreError when the text is no JSON.
nlohmann::json parse_json(std::string_view text);

}  // namespace quarterturn
