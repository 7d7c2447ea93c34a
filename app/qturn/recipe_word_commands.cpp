#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/recipe_reply.h"
#include "app/qturn/say.h"
#include "indexer/looks/own_words.h"
#include "indexer/record/recipe_text.h"
#include "indexer/rules/shorthand.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct WordOptions {
    std::string look;
    std::string name;
    std::string what;
    std::string begun;
    std::string step;
};

Reply templates(Session& session) {
    Reply reply{{}, {{"templates", json::array()}}};
    for (const RecipeTemplate& each : session.library().recipe_templates().all()) {
        reply.lines.push_back(each.name);
        reply.data["templates"].push_back(
            {{"name", each.name}, {"recipe", json::parse(recipe_json(each.recipe))}});
    }
    if (reply.lines.empty()) {
        reply.lines.emplace_back("No templates yet. Save one with: qturn recipe save-template");
    }
    return reply;
}

Reply save_template(Session& session, const WordOptions& options) {
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    const Recipe recipe = chosen_revision(library, look, std::nullopt).recipe;
    library.history().record("saved the template " + options.name,
                             [&] { library.recipe_templates().save(options.name, recipe); });
    return {{"Saved the recipe of " + look.name + " as the template " + options.name + '.'},
            {{"template", options.name}, {"look", look.name}, {"look_id", look.id.value}}};
}

Reply remove_template(Session& session, const WordOptions& options) {
    Library& library = session.library();
    library.history().record("removed the template " + options.name,
                             [&] { library.recipe_templates().remove(options.name); });
    return {{"Removed the template " + options.name + '.'}, {{"template", options.name}}};
}

Reply complete(Session& session, const WordOptions& options) {
    const auto what = parse_words_for(options.what);
    if (!what) {
        std::vector<std::string> known;
        for (const WordsFor each : all_words_for) known.emplace_back(word(each));
        throw WrongUse("'" + options.what + "' is nothing to complete. Name one of " +
                       joined(known) + '.');
    }
    const auto words = OwnWords(session.library()).beginning(*what, options.begun);
    return {words, {{"words", words}}};
}

Reply read_step(const WordOptions& options) {
    const Shorthand read = parse_shorthand(options.step);
    Recipe recipe;
    recipe.build = {read.step};
    Reply reply{{step_text(read.step)},
                {{"step", json::parse(recipe_json(recipe)).at("build").at(0)},
                 {"not_understood", json::array()}}};
    for (const ShorthandPart& part : read.parts) {
        if (!part.understood) reply.data["not_understood"].push_back(part.text);
    }
    return reply;
}

}  // namespace

void add_recipe_word_commands(CommandSet& commands) {
    const auto options = std::make_shared<WordOptions>();

    auto step_command = commands.add(
        {"recipe step", "Reads a step in shorthand into its fields, and changes nothing.",
         "qturn recipe step '25mm tongs away, 4 pins crossed'"},
        [options](Session&) { return read_step(*options); });
    step_command.argument("TEXT", options->step, "The step as she says it");

    auto complete_command = commands.add(
        {"recipe complete", "Completes what she begins to write from her own earlier words.",
         "qturn recipe complete product set"},
        [options](Session& session) { return complete(session, *options); });
    complete_command.argument("WHAT", options->what,
                              "product, amount, place, tool, pins, colour, piece or step");
    complete_command.optional_argument("BEGUN", options->begun, "What is written so far");

    commands.add({"recipe templates", "Lists her own templates.", "qturn recipe templates"},
                 templates);

    auto save_command = commands.add(
        {"recipe save-template", "Saves a look's recipe as a template to start others from.",
         "qturn recipe save-template 'Low twisted bun' 'Low bun, fine hair'"},
        [options](Session& session) { return save_template(session, *options); });
    save_command.argument("LOOK", options->look, "Name or number");
    save_command.argument("NAME", options->name, "The template's name");

    auto remove_command =
        commands.add({"recipe remove-template", "Removes a template; recipes stay as they are.",
                      "qturn recipe remove-template 'Low bun, fine hair'"},
                     [options](Session& session) { return remove_template(session, *options); });
    remove_command.argument("NAME", options->name, "The template's name");
}

}  // namespace quarterturn
