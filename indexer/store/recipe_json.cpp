#include <cmath>
#include <concepts>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "indexer/store/recipe_table.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

template <class Given, class Record>
concept Like = std::same_as<std::remove_const_t<Given>, Record>;

// The fields of each part, once for writing and reading alike.
template <class Visitor>
void visit(Visitor& visitor, Like<Product> auto& product) {
    visitor("name", product.name);
    visitor("amount", product.amount);
    visitor("where", product.where);
}

template <class Visitor>
void visit(Visitor& visitor, Like<HeatTool> auto& tool) {
    visitor("kind", tool.kind);
    visitor("barrel_mm", tool.barrel_mm);
    visitor("temperature_c", tool.temperature_c);
}

template <class Visitor>
void visit(Visitor& visitor, Like<Pins> auto& pins) {
    visitor("kind", pins.kind);
    visitor("colour", pins.colour);
    visitor("count", pins.count);
    visitor("crossed", pins.crossed);
}

template <class Visitor>
void visit(Visitor& visitor, Like<Step> auto& step) {
    visitor("words", step.words);
    visitor("minutes", step.minutes);
    visitor("pins", step.pins);
}

template <class Visitor>
void visit(Visitor& visitor, Like<Recipe> auto& recipe) {
    visitor("hair", recipe.hair);
    visitor("cautions", recipe.cautions);
    visitor("prep", recipe.prep);
    visitor("heat_protection", recipe.heat_protection);
    visitor("heat_tool", recipe.heat_tool);
    visitor("sections", recipe.sections);
    visitor("parting", recipe.parting);
    visitor("build", recipe.build);
    visitor("accessory", recipe.accessory);
    visitor("finish", recipe.finish);
    visitor("feedback", recipe.feedback);
    visitor("hands_on_minutes", recipe.hands_on_minutes);
    visitor("waiting_minutes", recipe.waiting_minutes);
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
    void operator()(const char* name, const Value& value) {
        json_[name] = written(within(part_, name), value);
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
        visit(writer, part);
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
    void operator()(const char* name, Value& value) {
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
        visit(reader, part);
        reader.refuse_unknown_fields();
    }

    const Json& json_;
    std::string part_;
    std::set<std::string> known_;
};

}  // namespace

std::string recipe_json(const Recipe& recipe) {
    Writer writer("");
    visit(writer, recipe);
    return std::move(writer).json().dump();
}

Recipe parse_recipe_json(std::string_view json) {
    try {
        const Json parsed = Json::parse(json);
        Recipe recipe;
        Reader reader(parsed, "");
        visit(reader, recipe);
        reader.refuse_unknown_fields();
        return recipe;
    } catch (const Json::exception& error) {
        throw StoreError(std::string("The recipe is no valid JSON (") + error.what() +
                         "): correct it and try again.");
    }
}

}  // namespace quarterturn
