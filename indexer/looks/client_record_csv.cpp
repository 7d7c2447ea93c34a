#include <nlohmann/json.hpp>
#include <string_view>

#include "indexer/looks/client_record.h"
#include "indexer/record/recipe_text.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

std::string csv_field(const std::string& text) {
    if (text.find_first_of("\",\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

std::string csv_line(const std::vector<std::string>& fields) {
    std::string line;
    for (const std::string& field : fields) {
        if (&field != &fields.front()) line += ',';
        line += csv_field(field);
    }
    return line + "\r\n";
}

// A spreadsheet would take such a text for a formula and run it (OWASP, CSV Injection).
std::string no_formula(std::string text) {
    const bool formula =
        !text.empty() && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos;
    return formula ? '\'' + text : text;
}

std::string plain_text(const Json& value) {
    if (value.is_null()) return {};
    if (value.is_string()) return no_formula(value.get<std::string>());
    if (!value.is_array()) return value.dump();
    std::string text;
    for (const Json& each : value) text += (text.empty() ? "" : " ") + plain_text(each);
    return text;
}

// A table of objects by these of their fields.
CsvFile table(const std::string& name, const Json& rows, const std::vector<std::string>& fields) {
    CsvFile file{name, csv_line(fields)};
    for (const Json& row : rows) {
        std::vector<std::string> values;
        for (const std::string& field : fields) values.push_back(plain_text(row.at(field)));
        file.text += csv_line(values);
    }
    return file;
}

// A line for each line that the recipe has in words.
CsvFile recipes_table(const ClientRecord& record) {
    CsvFile file{"recipes.csv", csv_line({"look_id", "revision", "saved_at", "part", "words"})};
    for (const LookRecord& each : record.looks) {
        for (const RecipeRevision& revision : each.recipes) {
            for (const RecipePart& part : recipe_parts(revision.recipe)) {
                for (const std::string& line : part.lines) {
                    file.text += csv_line({std::to_string(each.look.id.value),
                                           std::to_string(revision.number),
                                           iso_text(revision.saved_at), part.heading, line});
                }
            }
        }
    }
    return file;
}

}  // namespace

std::vector<CsvFile> client_record_csv(const ClientRecord& record) {
    const Json json = Json::parse(client_record_json(record));
    return {
        table("client.csv", Json::array({json.at("client")}), {"id", "name", "note"}),
        table("weddings.csv", json.at("weddings"),
              {"id", "name", "date", "venue", "ready_by", "role"}),
        table("sittings.csv", json.at("sittings"),
              {"id", "kind", "wedding_id", "starts", "ends", "note"}),
        table("looks.csv", json.at("looks"), {"id", "name", "worn", "wedding_id", "sitting_ids"}),
        recipes_table(record),
        table("photos.csv", json.at("photos"),
              {"id", "name", "path", "sha256", "moment", "sitting_id", "look_id", "stage", "angle",
               "mirrored", "note"}),
        table("consents.csv", json.at("consents"),
              {"id", "use", "said", "said_on", "shown", "from", "until", "how", "giver", "guardian",
               "witness", "age", "note", "recorded_at"}),
        table("exports.csv", json.at("exports"),
              {"id", "photo_id", "photo", "use", "at", "file", "sha256", "under", "places",
               "taken_down_on", "taken_down_note"})};
}

}  // namespace quarterturn
