#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/recipe_reply.h"
#include "app/qturn/say.h"
#include "indexer/looks/recipe_findings.h"
#include "indexer/looks/recipe_moments.h"
#include "indexer/record/caution.h"
#include "indexer/rules/recipe_difference.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct CheckOptions {
    std::string look;
    std::string other;
    std::optional<int> from;
    std::optional<int> to;
    bool write = false;
};

Reply check(Session& session, const CheckOptions& options) {
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    const auto current = library.recipes().current(look.id);
    const auto findings = RecipeJudge(library).findings(
        look, current ? std::optional{current->recipe} : std::nullopt);
    Reply reply{{look.name + (findings.empty() ? ": the recipe says all that is needed."
                                               : ": to think about before sign-off.")}};
    add_look(reply, look);
    add_findings(reply, findings);
    reply.lines.emplace_back(no_medical_advice);
    reply.data["caution"] = no_medical_advice;
    if (!findings.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

std::string weight_text(std::optional<Weight> weight) {
    if (!weight) return "off";
    return *weight == Weight::warning ? "warning" : "bar";
}

Reply rules(Session& session, const CheckOptions& options) {
    Library& library = session.library();
    const ReadRules read = read_recipe_rules(library);
    std::optional<Path> before;
    if (options.write) before = write_recipe_rules(library, read.rules);
    const std::string file = (library.folder() / recipe_rules_name).string();
    std::vector<std::vector<std::string>> rows;
    Reply reply{{}, {{"file", file}, {"rules", json::array()}, {"problems", read.problems}}};
    for (const RecipeRule rule : all_recipe_rules()) {
        const std::string weight = weight_text(read.rules.weight(rule));
        rows.push_back({std::string(word(rule)), weight, std::string(about(rule))});
        reply.data["rules"].push_back({{"name", word(rule)},
                                       {"weight", weight},
                                       {"usual_weight", weight_text(usual_weight(rule))},
                                       {"about", about(rule)}});
    }
    reply.lines = columns(rows);
    append(reply.lines, read.problems);
    reply.lines.push_back("Weigh them otherwise in " + file +
                          (options.write ? "." : "; --write writes it."));
    if (before)
        reply.lines.push_back("What stood there before is kept as " + before->string() + '.');
    if (!read.problems.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Look look_before(Library& library, const Look& look, const CheckOptions& options) {
    return options.other.empty() ? look : find_look(library, options.other);
}

RecipeRevision before(Library& library, const Look& look, const CheckOptions& options) {
    if (!options.other.empty()) {
        return chosen_revision(library, look_before(library, look, options), options.from);
    }
    const RecipeRevision after = chosen_revision(library, look, options.to);
    if (!options.from && after.number == 1) {
        throw WrongUse(look.name + " has one revision only, so nothing has changed yet.");
    }
    return chosen_revision(library, look, options.from.value_or(after.number - 1));
}

void add_column(std::vector<std::string>& lines, const char* sign,
                const std::vector<std::string>& words) {
    for (const std::string& line : words) lines.push_back(std::string("  ") + sign + line);
}

RecipeMoment moment_of(Library& library, const Look& look, const RecipeRevision& revision) {
    return {look, revision,
            revision.sitting ? library.sittings().find(*revision.sitting) : std::nullopt};
}

void add_photo_pairs(Reply& reply, const std::vector<AnglePair>& pairs) {
    reply.data["photos"] = json::array();
    const auto name = [](const std::optional<Photo>& photo) {
        return photo ? photo->file.name : std::string();
    };
    for (const AnglePair& pair : pairs) {
        reply.data["photos"].push_back({{"angle", word(pair.angle)},
                                        {"was", pair.was ? json(name(pair.was)) : json()},
                                        {"is", pair.is ? json(name(pair.is)) : json()}});
        reply.lines.push_back("Photos, " + std::string(word(pair.angle)) + ":");
        if (pair.was) add_column(reply.lines, "was: ", {name(pair.was)});
        if (pair.is) add_column(reply.lines, "is:  ", {name(pair.is)});
    }
}

Reply difference(Session& session, const CheckOptions& options) {
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    const RecipeRevision was = before(library, look, options);
    const RecipeRevision is = chosen_revision(library, look, options.to);
    Reply reply{{}, {{"from", was.number}, {"to", is.number}, {"changes", json::array()}}};
    add_look(reply, look);
    const auto changes = recipe_difference(was.recipe, is.recipe);
    for (const ToldChange& change : told_changes(was.recipe, changes)) {
        reply.lines.push_back(change.what + ":");
        add_column(reply.lines, "was: ", change.was);
        add_column(reply.lines, "is:  ", change.is);
        reply.data["changes"].push_back(
            {{"what", change.what}, {"was", change.was}, {"is", change.is}});
    }
    if (reply.lines.empty()) reply.lines.emplace_back("Nothing has changed.");
    add_photo_pairs(
        reply, angle_pairs(library, moment_of(library, look_before(library, look, options), was),
                           moment_of(library, look, is)));
    return reply;
}

}  // namespace

void add_recipe_check_commands(CommandSet& commands) {
    const auto options = std::make_shared<CheckOptions>();

    auto check_command =
        commands.add({"recipe check", "Says what a recipe still lacks, and what is unwise in it.",
                      "qturn recipe check 'Low twisted bun'"},
                     [options](Session& session) { return check(session, *options); });
    check_command.argument("LOOK", options->look, "Name or number");

    auto rules_command =
        commands.add({"recipe rules", "Lists the rules of the recipe check and what each weighs.",
                      "qturn recipe rules --write"},
                     [options](Session& session) { return rules(session, *options); });
    rules_command.flag("--write", options->write, "Write them into the file where she edits them");

    auto diff_command = commands.add(
        {"recipe diff", "Tells what changed between two revisions, or between two looks.",
         "qturn recipe diff 'Low twisted bun' --from 1 --to 3"},
        [options](Session& session) { return difference(session, *options); });
    diff_command.argument("LOOK", options->look, "Name or number");
    diff_command.option("--from NUMBER", options->from, "The revision before (the last but one)");
    diff_command.option("--to NUMBER", options->to, "The revision after (the newest)");
    diff_command.option("--with LOOK", options->other, "Set against the recipe of another look");
}

}  // namespace quarterturn
