#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/read_file.h"
#include "app/qturn/recipe_reply.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/recipe_findings.h"
#include "indexer/looks/write_recipe.h"
#include "indexer/rules/recipe_start.h"
#include "indexer/rules/shorthand.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct RecipeOptions {
    std::string look;
    std::string other;
    std::string own_template;
    std::string file;
    std::vector<std::string> parts;
    std::vector<std::string> steps;
    std::optional<int> revision;
    bool draft = false;
};

std::string draft_text(const RecipeDraft& draft) {
    return "Draft of " + iso_text(date_of(draft.kept_at)) + ' ' + clock_text(draft.kept_at);
}

Reply show_draft(Library& library, const Look& look) {
    const auto draft = library.recipes().draft(look.id);
    if (!draft) throw WrongUse(look.name + " has no draft: all of its recipe is saved.");
    Reply reply{{"The recipe of " + look.name + ". " + draft_text(*draft) + '.'},
                {{"kept_at", iso_text(draft->kept_at)},
                 {"recipe", json::parse(recipe_json(draft->recipe))}}};
    append(reply.lines, recipe_lines(draft->recipe));
    add_look(reply, look);
    return reply;
}

Reply show(Session& session, const RecipeOptions& options) {
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    if (options.draft) return show_draft(library, look);
    const auto revision = chosen_revision(library, look, options.revision);
    std::string heading = "The recipe of " + look.name + ". " + revision_text(revision);
    if (revision.sitting) heading += ", at the " + Names(library).sitting(*revision.sitting);
    Reply reply{{heading + '.'}, revision_json(revision)};
    append(reply.lines, recipe_lines(revision.recipe));
    if (library.recipes().draft(look.id)) {
        reply.lines.push_back("There is a draft besides: qturn recipe show --draft");
    }
    add_look(reply, look);
    return reply;
}

Reply list_revisions(Session& session, const RecipeOptions& options) {
    const Look look = find_look(session.library(), options.look);
    Reply reply{{}, {{"revisions", json::array()}}};
    add_look(reply, look);
    for (const auto& revision : session.library().recipes().revisions(look.id)) {
        reply.lines.push_back(revision_text(revision));
        reply.data["revisions"].push_back(revision_json(revision));
    }
    if (reply.lines.empty()) reply.lines.push_back(look.name + " has no recipe yet.");
    return reply;
}

Recipe with_parts(Library& library, const Look& look, const RecipeOptions& options) {
    Recipe recipe = library.recipes().begun(look.id);
    for (const std::string& part : options.parts) recipe = with_part(recipe, part);
    for (const std::string& step : options.steps) {
        recipe.build.push_back(parse_shorthand(step).step);
    }
    return recipe;
}

Reply kept_draft(Library& library, const Look& look, const Recipe& recipe) {
    refuse_impossible_numbers(recipe);
    library.recipes().keep_draft(look.id, recipe, local_now());
    const auto draft = library.recipes().draft(look.id);
    Reply reply{{look.name + ": " + (draft ? draft_text(*draft) : "nothing new to keep") + '.'},
                {{"kept_at", draft ? json(iso_text(draft->kept_at)) : json()},
                 {"recipe", json::parse(recipe_json(recipe))}}};
    add_look(reply, look);
    return reply;
}

Reply revision_saved(Library& library, const Look& look, const Recipe& recipe) {
    RecipeJudge judge(library);  // first: with rules that cannot be read nothing is saved
    save_recipe(library, look, recipe, local_now());
    const RecipeRevision revision = *library.recipes().current(look.id);
    Reply reply{{look.name + ": " + revision_text(revision) + '.'}, revision_json(revision)};
    add_look(reply, look);
    add_findings(reply, judge.findings(look, revision.recipe));
    return reply;
}

// `make` tells the recipe, and nobody else adds to the one that is there meanwhile.
Reply saved(Library& library, const Look& look, bool as_draft,
            const std::function<Recipe()>& make) {
    Reply reply;
    library.history().record(
        (as_draft ? "kept a draft of the recipe of " : "saved the recipe of ") + look.name, [&] {
            reply = as_draft ? kept_draft(library, look, make())
                             : revision_saved(library, look, make());
        });
    return reply;
}

Reply set(Session& session, const RecipeOptions& options) {
    const bool part_by_part = !options.parts.empty() || !options.steps.empty();
    if (options.file.empty() != part_by_part) {
        throw WrongUse(
            "Name a recipe file with --file, or single parts with --part NAME=TEXT and --step "
            "TEXT.");
    }
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    if (part_by_part) {
        return saved(library, look, options.draft,
                     [&] { return with_parts(library, look, options); });
    }
    const Recipe whole = parse_recipe_json(read_text(options.file));
    return saved(library, look, options.draft, [&] { return whole; });
}

Recipe start_from_template(Library& library, const std::string& name) {
    const auto found = library.recipe_templates().find(name);
    if (!found) {
        throw WrongUse("There is no template '" + name +
                       "'. List them with: qturn recipe templates");
    }
    return started_from(found->recipe, StartFor::another_client);
}

Reply start(Session& session, const RecipeOptions& options) {
    if (options.other.empty() == options.own_template.empty()) {
        throw WrongUse("Name the look to start from, or a template with --template NAME.");
    }
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    if (!options.own_template.empty()) {
        return saved(library, look, options.draft,
                     [&] { return start_from_template(library, options.own_template); });
    }
    const Look other = find_look(library, options.other);
    return saved(library, look, options.draft, [&] {
        const auto recipe = start_from_look(library, look, other);
        if (!recipe) throw WrongUse(other.name + " has no recipe to start from.");
        return *recipe;
    });
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
    show_command.flag("--draft", options->draft, "What is not saved as a revision yet");

    auto set_command = commands.add(
        {"recipe set",
         "Saves a look's recipe, whole or part by part, and says what is still missing.",
         "qturn recipe set 'Low twisted bun' --part parting='deep side part, on her left'"},
        [options](Session& session) { return set(session, *options); });
    set_command.argument("LOOK", options->look, "Name or number");
    set_command.option("--file FILE", options->file,
                       "The whole recipe (JSON); - reads it from standard input");
    set_command.option("--part NAME=TEXT", options->parts,
                       "One part, or a field within it (heat_tool.barrel_mm=25); once for each");
    set_command.option("--step TEXT", options->steps,
                       "A further step in shorthand (25mm tongs away, 4 pins crossed)");
    set_command.flag("--draft", options->draft, "Keep it as a draft, which is no revision");

    auto from_command =
        commands.add({"recipe from", "Starts a look's recipe from another look's or a template.",
                      "qturn recipe from 'Let down in waves' 'Low twisted bun'"},
                     [options](Session& session) { return start(session, *options); });
    from_command.argument("LOOK", options->look, "Name or number");
    from_command.optional_argument("OTHER", options->other, "The look to start from");
    from_command.option("--template NAME", options->own_template, "A template of her own instead");
    from_command.flag("--draft", options->draft, "Keep it as a draft, which is no revision");

    auto revisions_command = commands.add(
        {"recipe revisions", "Lists what was saved, oldest first.", "qturn recipe revisions 2"},
        [options](Session& session) { return list_revisions(session, *options); });
    revisions_command.argument("LOOK", options->look, "Name or number");
}

}  // namespace quarterturn
