#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/read_file.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/recipe_findings.h"
#include "indexer/record/recipe_text.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct RecipeOptions {
    std::string look;
    std::string file;
    std::vector<std::string> parts;
    std::optional<int> revision;
};

json revision_json(const RecipeRevision& revision) {
    return {{"revision", revision.number},
            {"saved_at", iso_text(revision.saved_at)},
            {"recipe", json::parse(recipe_json(revision.recipe))}};
}

std::string revision_text(const RecipeRevision& revision) {
    return "Revision " + std::to_string(revision.number) + ", saved " +
           iso_text(date_of(revision.saved_at)) + ' ' + clock_text(revision.saved_at);
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

Reply show(Session& session, const RecipeOptions& options) {
    const Look look = find_look(session.library(), options.look);
    const auto revision = chosen_revision(session.library(), look, options.revision);
    Reply reply{{"The recipe of " + look.name + ". " + revision_text(revision) + '.'},
                revision_json(revision)};
    append(reply.lines, recipe_lines(revision.recipe));
    reply.data["look"] = look.name;
    reply.data["look_id"] = look.id.value;
    return reply;
}

Reply list_revisions(Session& session, const RecipeOptions& options) {
    const Look look = find_look(session.library(), options.look);
    Reply reply{{},
                {{"look", look.name}, {"look_id", look.id.value}, {"revisions", json::array()}}};
    for (const auto& revision : session.library().recipes().revisions(look.id)) {
        reply.lines.push_back(revision_text(revision));
        reply.data["revisions"].push_back(revision_json(revision));
    }
    if (reply.lines.empty()) reply.lines.push_back(look.name + " has no recipe yet.");
    return reply;
}

// "parting=deep side part, on her left"; parts that are no plain text are written as JSON.
void set_part(json& recipe, const std::string& text) {
    const std::size_t at = text.find('=');
    const std::string name = text.substr(0, at);
    if (at == std::string::npos || !recipe.contains(name)) {
        std::vector<std::string> known;
        for (const auto& part : recipe.items()) known.push_back(part.key());
        throw WrongUse("'" + text + "' sets no part of a recipe. The parts are " + joined(known) +
                       ".");
    }
    const std::string value = text.substr(at + 1);
    if (recipe[name].is_string()) {
        recipe[name] = value;
        return;
    }
    recipe[name] = json::parse(value, nullptr, false);
    if (recipe[name].is_discarded()) {
        throw WrongUse("The part '" + name + "' is written as JSON; '" + value + "' is none.");
    }
}

Recipe wished_recipe(Library& library, const Look& look, const RecipeOptions& options) {
    if (!options.file.empty()) return parse_recipe_json(read_text(options.file));
    const auto current = library.recipes().current(look.id);
    json recipe = json::parse(recipe_json(current ? current->recipe : Recipe{}));
    for (const std::string& part : options.parts) set_part(recipe, part);
    return parse_recipe_json(recipe.dump());
}

Reply set(Session& session, const RecipeOptions& options) {
    if (options.file.empty() == options.parts.empty()) {
        throw WrongUse("Name a recipe file with --file, or single parts with --part NAME=TEXT.");
    }
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    library.recipes().save(look.id, wished_recipe(library, look, options), local_now());
    const RecipeRevision saved = *library.recipes().current(look.id);
    Reply reply{{look.name + ": " + revision_text(saved) + '.'}, revision_json(saved)};
    reply.data["look"] = look.name;
    reply.data["look_id"] = look.id.value;
    reply.data["findings"] = json::array();
    for (const RecipeFinding& finding : RecipeJudge(library).findings(look, saved.recipe)) {
        reply.lines.push_back("  " + finding.sentence);
        reply.data["findings"].push_back(
            {{"bars_sign_off", finding.weight == Weight::bars_sign_off},
             {"sentence", finding.sentence}});
    }
    return reply;
}

}  // namespace

void add_recipe_commands(CommandSet& commands) {
    commands.group("recipe", "How a look is made; each saved change is a revision.");
    const auto options = std::make_shared<RecipeOptions>();

    auto show_command = commands.add(
        {"recipe show", "Shows a look's recipe.", "qturn recipe show 'Low twisted bun'"},
        [options](Session& session) { return show(session, *options); });
    show_command.argument("LOOK", options->look, "Name or number");
    show_command.option("--revision NUMBER", options->revision, "An older one");

    auto set_command = commands.add(
        {"recipe set",
         "Saves a look's recipe, whole or part by part, and says what is still missing.",
         "qturn recipe set 'Low twisted bun' --part parting='deep side part, on her left'"},
        [options](Session& session) { return set(session, *options); });
    set_command.argument("LOOK", options->look, "Name or number");
    set_command.option("--file FILE", options->file,
                       "The whole recipe (JSON); - reads it from standard input");
    set_command.option("--part NAME=TEXT", options->parts, "One part; once for each");

    auto revisions_command = commands.add(
        {"recipe revisions", "Lists what was saved, oldest first.", "qturn recipe revisions 2"},
        [options](Session& session) { return list_revisions(session, *options); });
    revisions_command.argument("LOOK", options->look, "Name or number");
}

}  // namespace quarterturn
