#include <cmath>
#include <concepts>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "indexer/record/recipe/fields.h"
#include "indexer/store/recipe_table.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

template <class Word>
std::optional<Word> parsed(std::string_view text);
template <>
std::optional<Wind> parsed(std::string_view text) {
    return parse_wind(text);
}
template <>
std::optional<PartingSide> parsed(std::string_view text) {
    return parse_parting_side(text);
}
template <>
std::optional<StrokeKind> parsed(std::string_view text) {
    return parse_stroke_kind(text);
}
template <>
std::optional<PieceKind> parsed(std::string_view text) {
    return parse_piece_kind(text);
}
template <>
std::optional<Hold> parsed(std::string_view text) {
    return parse_hold(text);
}
template <>
std::optional<SeenIn> parsed(std::string_view text) {
    return parse_seen_in(text);
}

// "light", "regular" or "strong"
template <class Word>
std::string all_words() {
    std::vector<std::string_view> words;
    for (int i = 0; !word(static_cast<Word>(i)).empty(); ++i)
        words.push_back(word(static_cast<Word>(i)));
    std::string text;
    for (const std::string_view each : words) {
        if (!text.empty()) text += each == words.back() ? " or " : ", ";
        text.append("\"").append(each).append("\"");
    }
    return text;
}

[[noreturn]] void refuse(const std::string& field, const std::string& why) {
    throw StoreError("In the recipe, \"" + field + "\" " + why + ": correct it and try again.");
}

// The name of a field within a part: "build 2, pins 1, count".
std::string within(const std::string& part, const std::string& field) {
    return part.empty() ? field : part + ", " + field;
}

class Writer {
  public:
    explicit Writer(std::string part) : part_(std::move(part)) {}

    template <class Value>
    void always(const char* name, const Value& value) {
        json_[name] = written(within(part_, name), value);
    }
    template <class Value>
    void if_any(const char* name, const Value& value) {
        if (value != Value{}) always(name, value);
    }

    Json json() && { return std::move(json_); }

  private:
    static Json written(const std::string&, bool value) { return value; }
    static Json written(const std::string&, int value) { return value; }
    static Json written(const std::string& field, double value) {
        if (!std::isfinite(value)) refuse(field, "is no number");
        return value;
    }
    static Json written(const std::string& field, const std::string& text) {
        refuse_unless_text("\"" + field + "\" in the recipe", text);
        return text;
    }
    static Json written(const std::string& field, Date date) {
        const std::string text = date.ok() ? iso_text(date) : std::string();
        if (!parse_date(text)) refuse(field, "is no date");
        return text;
    }
    template <class Word>
    requires std::is_enum_v<Word>
    static Json written(const std::string&, Word value) { return word(value); }
    template <class Value>
    static Json written(const std::string& field, const std::optional<Value>& value) {
        return value ? written(field, *value) : Json();
    }
    template <class Value>
    static Json written(const std::string& field, const std::vector<Value>& values) {
        Json list = Json::array();
        for (const Value& value : values) {
            list.push_back(written(field + " " + std::to_string(list.size() + 1), value));
        }
        return list;
    }
    template <class Part>
    requires std::is_class_v<Part>
    static Json written(const std::string& field, const Part& part) {
        Writer writer(field);
        visit_fields(writer, part);
        return std::move(writer).json();
    }

    std::string part_;
    Json json_ = Json::object();
};

class Reader {
  public:
    Reader(const Json& json, std::string part) : json_(json), part_(std::move(part)) {
        if (!json.is_object()) refuse(part_.empty() ? "the whole" : part_, "must be an object {…}");
    }

    template <class Value>
    void if_any(const char* name, Value& value) {
        always(name, value);
    }
    template <class Value>
    void always(const char* name, Value& value) {
        known_.insert(name);
        if (const auto found = json_.find(name); found != json_.end()) {
            take(within(part_, name), *found, value);
        }
    }

    void refuse_unknown_fields() const {
        for (const auto& [name, value] : json_.items()) {
            if (!known_.contains(name)) refuse(within(part_, name), "is no field of a recipe");
        }
    }

  private:
    static void take(const std::string& field, const Json& json, bool& value) {
        if (!json.is_boolean()) refuse(field, "must be true or false");
        value = json.get<bool>();
    }
    static void take(const std::string& field, const Json& json, int& value) {
        using Limits = std::numeric_limits<int>;
        const bool fits =
            json.is_number_integer() &&
            (!json.is_number_unsigned() || json.get<std::uint64_t>() <= Limits::max()) &&
            json.get<std::int64_t>() >= Limits::min();
        if (!fits) refuse(field, "must be a whole number");
        value = json.get<int>();
    }
    static void take(const std::string& field, const Json& json, double& value) {
        if (!json.is_number()) refuse(field, "must be a number");
        value = json.get<double>();
    }
    static void take(const std::string& field, const Json& json, std::string& text) {
        if (!json.is_string()) refuse(field, "must be a text");
        text = json.get<std::string>();
        refuse_unless_text("\"" + field + "\" in the recipe", text);
    }
    static void take(const std::string& field, const Json& json, Date& date) {
        const auto read = json.is_string() ? parse_date(json.get<std::string>()) : std::nullopt;
        if (!read) refuse(field, "must be a date such as \"2026-11-07\"");
        date = *read;
    }
    template <class Word>
    requires std::is_enum_v<Word>
    static void take(const std::string& field, const Json& json, Word& value) {
        const auto read = json.is_string() ? parsed<Word>(json.get<std::string>()) : std::nullopt;
        if (!read) refuse(field, "must be " + all_words<Word>());
        value = *read;
    }
    template <class Value>
    static void take(const std::string& field, const Json& json, std::optional<Value>& value) {
        if (!json.is_null()) take(field, json, value.emplace());
    }
    template <class Value>
    static void take(const std::string& field, const Json& json, std::vector<Value>& values) {
        if (!json.is_array()) refuse(field, "must be a list […]");
        for (const Json& entry : json) {
            Value& value = values.emplace_back();
            take(field + " " + std::to_string(values.size()), entry, value);
        }
    }
    template <class Part>
    requires std::is_class_v<Part>
    static void take(const std::string& field, const Json& json, Part& part) {
        Reader reader(json, field);
        visit_fields(reader, part);
        reader.refuse_unknown_fields();
    }

    const Json& json_;
    std::string part_;
    std::set<std::string> known_;
};

struct NameCollector {
    std::vector<std::string> names;

    template <class Value>
    void always(const char* name, const Value&) {
        names.emplace_back(name);
    }
    template <class Value>
    void if_any(const char* name, const Value&) {
        names.emplace_back(name);
    }
};

}  // namespace

std::string recipe_json(const Recipe& recipe) {
    Writer writer("");
    visit_fields(writer, recipe);
    return std::move(writer).json().dump();
}

std::vector<std::string> recipe_field_names() {
    NameCollector names;
    const Recipe recipe;
    visit_fields(names, recipe);
    return names.names;
}

Recipe parse_recipe_json(std::string_view json) {
    try {
        const Json parsed = Json::parse(json);
        Recipe recipe;
        Reader reader(parsed, "");
        visit_fields(reader, recipe);
        reader.refuse_unknown_fields();
        return recipe;
    } catch (const Json::exception& error) {
        throw StoreError(std::string("The recipe is no valid JSON (") + error.what() +
                         "): correct it and try again.");
    }
}

}  // namespace quarterturn
