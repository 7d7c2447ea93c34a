#include "app/qturn/recipe_reply.h"

#include "app/qturn/say.h"
#include "indexer/record/recipe_text.h"

namespace quarterturn {

using nlohmann::json;

json revision_json(const RecipeRevision& revision) {
    return {{"revision", revision.number},
            {"saved_at", iso_text(revision.saved_at)},
            {"sitting", revision.sitting ? json(revision.sitting->value) : json()},
            {"recipe", json::parse(recipe_json(revision.recipe))}};
}

std::string revision_text(const RecipeRevision& revision) {
    return "Revision " + std::to_string(revision.number) + ", saved " +
           iso_text(date_of(revision.saved_at)) + ' ' + clock_text(revision.saved_at);
}

std::vector<std::string> recipe_lines(const Recipe& recipe) {
    std::vector<std::string> lines;
    for (const RecipePart& part : recipe_parts(recipe)) {
        if (part.lines.size() == 1) {
            lines.push_back(part.heading + ": " + part.lines.front());
            continue;
        }
        lines.push_back(part.heading + ":");
        for (const std::string& line : part.lines) lines.push_back("  " + line);
    }
    return lines;
}

RecipeRevision chosen_revision(Library& library, const Look& look, std::optional<int> number) {
    for (const RecipeRevision& revision : library.recipes().revisions(look.id)) {
        if (number && revision.number == *number) return revision;
    }
    const auto current = library.recipes().current(look.id);
    if (current && !number) return *current;
    throw WrongUse(look.name + " has no " +
                   (number ? "revision " + std::to_string(*number) : std::string("recipe yet")) +
                   ". Save one with: qturn recipe set");
}

void add_look(Reply& reply, const Look& look) {
    reply.data["look"] = look.name;
    reply.data["look_id"] = look.id.value;
}

void add_findings(Reply& reply, const std::vector<RecipeFinding>& findings) {
    reply.data["findings"] = json::array();
    for (const RecipeFinding& finding : findings) {
        reply.lines.push_back("  " + finding.sentence);
        reply.data["findings"].push_back(
            {{"bars_sign_off", finding.weight == Weight::bars_sign_off},
             {"rule", finding.rule},
             {"sentence", finding.sentence}});
    }
}

namespace {

// "build.2.minutes": numbers count from 1.
json& place_in(json& recipe, const std::string& path) {
    json* place = &recipe;
    std::size_t from = 0;
    while (from <= path.size()) {
        const std::size_t end = std::min(path.find('.', from), path.size());
        const std::string name = path.substr(from, end - from);
        const bool number = !name.empty() && name.size() < 4 &&
                            name.find_first_not_of("0123456789") == std::string::npos;
        if (number && (place->is_array() || place->is_null())) {
            const std::size_t wanted = std::stoul(name);
            if (wanted == 0 || wanted > place->size() + 1) {
                throw WrongUse("'" + path + "' skips some: the next number is " +
                               std::to_string(place->size() + 1) + ".");
            }
            place = &(*place)[wanted - 1];
        } else if (place->is_object() || place->is_null()) {
            place = &(*place)[name];
        } else {
            throw WrongUse("'" + path + "' names a part of what has no parts.");
        }
        from = end + 1;
    }
    return *place;
}

Recipe with_value(json recipe, const std::string& path, const json& value) {
    place_in(recipe, path) = value;
    return parse_recipe_json(recipe.dump());
}

}  // namespace

Recipe with_part(const Recipe& recipe, const std::string& text) {
    const std::size_t at = text.find('=');
    const std::string path = text.substr(0, at);
    const auto known = recipe_field_names();
    const bool is_known =
        std::find(known.begin(), known.end(), path.substr(0, path.find('.'))) != known.end();
    if (at == std::string::npos || !is_known) {
        throw WrongUse("'" + text + "' sets no part of a recipe. The parts are " + joined(known) +
                       ".");
    }
    const json whole = json::parse(recipe_json(recipe));
    const std::string value = text.substr(at + 1);
    try {
        return with_value(whole, path, value);
    } catch (const StoreError& refused) {
        const json parsed = json::parse(value, nullptr, false);
        if (!parsed.is_discarded()) return with_value(whole, path, parsed);
        throw WrongUse(std::string(refused.what()) + " What is no text is written as JSON.");
    }
}

}  // namespace quarterturn
