#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/pair_filter_options.h"
#include "app/qturn/pair_reply.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/pairs.h"
#include "indexer/looks/shared_facts.h"
#include "indexer/portfolio/pair_figures.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::string facts_line(const LookFacts& facts, Fact fact) {
    std::vector<std::string> values;
    bool said = false;
    for (const LookFact& each : facts) {
        if (each.fact != fact) continue;
        values.push_back(each.value);
        said = said || each.said;
    }
    if (values.empty()) return "not told";
    return joined(values) + (said ? ", as you said" : "");
}

std::vector<std::string> facts_lines(const LookFacts& facts) {
    std::vector<std::vector<std::string>> rows;
    for (const Fact fact : facts_of_look) {
        rows.push_back({std::string(word(fact)), facts_line(facts, fact)});
    }
    return columns(rows);
}

json facts_json(const LookFacts& facts) {
    json list = json::array();
    for (const LookFact& fact : facts) {
        list.push_back({{"fact", word(fact.fact)}, {"value", fact.value}, {"said", fact.said}});
    }
    return list;
}

std::string worn_words(const std::optional<Date>& day) {
    if (!day) return {};
    return (*day > date_of(local_now()) ? ", to be worn " : ", worn ") + iso_text(*day);
}

Reply pair_reply(Library& library, const std::string& number) {
    const Pair pair = find_pair(library, number);
    const auto photos = photos_of(library, {pair});
    const Look look = library.looks().find(pair.made.place.look).value();
    const Names names(library);
    const auto cells = pair_cells(pair, names, photos, {{look.id, look}});
    const auto facts = facts_of_looks(library)[look.id];
    Reply reply{{cells[0] + "  " + cells[1] + ", " + cells[2],
                 cells[3] + ", " + cells[4] + worn_words(pair.made.worn_on), "First: " + cells[6],
                 "Second: " + cells[7]},
                {{"pair", to_json(pair, names, photos)}, {"facts", facts_json(facts)}}};
    if (!cells[8].empty()) reply.lines.push_back("You said: " + cells[8]);
    const auto notes = side_notes(pair, photos);
    append(reply.lines, notes);
    append(reply.lines, facts_lines(facts));
    if (!notes.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

json figures_json(const PairFigures& figures, const Fairness& fairness) {
    const auto known = [](const std::optional<double>& value) {
        return value ? json(*value) : json();
    };
    json light;
    if (figures.light) {
        light = {{"exposure_ev", figures.light->exposure_ev},
                 {"white_balance_de00", figures.light->white_balance_de00},
                 {"at_least", figures.light->at_least}};
    }
    return {{"light", light},
            {"size", known(figures.size)},
            {"turn_degrees", known(figures.turn_degrees)},
            {"unfair", fairness.unfair}};
}

Reply show(Library& library, const std::string& number) {
    Reply reply = pair_reply(library, number);
    const Pair pair = find_pair(library, number);
    const auto photos = photos_of(library, {pair});
    const auto decoder = make_confined_decoder();
    HeadFinder finder;
    const PairFigures figures = measure_pair(
        library, *decoder, finder, pair, photos.at(pair.made.first), photos.at(pair.made.second));
    const Fairness fairness = judge_fairness(figures);
    reply.data["figures"] = figures_json(figures, fairness);
    append(reply.lines, fairness.figures);
    if (!figures.size) {
        reply.lines.emplace_back(
            "Show where the head is in both photos, and it can be told: qturn head-points PHOTO");
    }
    if (fairness.unfair.empty()) return reply;
    reply.lines.emplace_back(unfair_caution);
    reply.outcome = Outcome::needs_attention;
    return reply;
}

struct ChoiceOptions {
    std::string pair;
    Text first;
    Text second;
    bool take_back = false;
};

std::optional<PhotoId> frame(Library& library, const Text& name, std::optional<PhotoId> before) {
    if (!name) return before;
    if (*name == "best") return std::nullopt;
    return find_photo(library, *name).id;
}

// Keeps what she chose as one action that can be undone.
Reply kept_reply(Library& library, const std::string& pair, const std::string& said,
                 const std::function<void()>& choose) {
    library.history().record(said + " pair " + pair, choose);
    Reply reply = pair_reply(library, pair);
    reply.lines.emplace_back("To take it back: qturn undo");
    return reply;
}

Reply choose(Session& session, const ChoiceOptions& options) {
    if (!options.first && !options.second) {
        throw WrongUse("Name a photo with --first or --second; 'best' leaves it to the program.");
    }
    Library& library = session.library();
    const Pair pair = find_pair(library, options.pair);
    return kept_reply(library, options.pair, "chose photos for", [&] {
        choose_frames(library, pair.id, frame(library, options.first, pair.choice.first),
                      frame(library, options.second, pair.choice.second));
    });
}

Reply keep_pinned(Session& session, const ChoiceOptions& options) {
    Library& library = session.library();
    const PairId pair = find_pair(library, options.pair).id;
    return kept_reply(library, options.pair, options.take_back ? "let go of" : "pinned",
                      [&] { pin(library, pair, !options.take_back); });
}

Reply keep_refused(Session& session, const ChoiceOptions& options) {
    Library& library = session.library();
    const PairId pair = find_pair(library, options.pair).id;
    return kept_reply(library, options.pair, options.take_back ? "listed again" : "refused",
                      [&] { refuse(library, pair, !options.take_back); });
}

struct FactOptions {
    std::string look;
    std::map<Fact, Texts> values;
    Texts as_read;
};

Reply facts(Session& session, const FactOptions& options) {
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    refuse_unknown_values(library, options.values);
    library.history().record("changed what " + look.name + " is found by", [&] {
        for (const auto& [fact, values] : options.values) {
            if (!values.empty()) library.look_facts().say(look.id, fact, values);
        }
        for (const std::string& name : options.as_read) {
            const auto fact = parse_fact(name);
            if (!fact) throw WrongUse("'" + name + "' is no fact of a look.");
            library.look_facts().say(look.id, *fact, {});
        }
    });
    bring_pairs_up_to_date(library);
    const auto now = facts_of_looks(library)[look.id];
    Reply reply{{number_text(look.id.value) + "  " + look.name},
                {{"look_id", look.id.value}, {"facts", facts_json(now)}}};
    append(reply.lines, facts_lines(now));
    return reply;
}

void add_choose(CommandSet& commands) {
    const auto options = std::make_shared<ChoiceOptions>();
    auto command = commands.add({"pairs choose", "Puts other photos into a pair.",
                                 "qturn pairs choose 12 --first IMG_0012.jpg --second best"},
                                [options](Session& session) { return choose(session, *options); });
    command.argument("PAIR", options->pair, "Its number");
    command.option("--first PHOTO", options->first, "Name or number; 'best' takes it back");
    command.option("--second PHOTO", options->second, "Name or number; 'best' takes it back");
}

template <class Does>
void add_take_back(CommandSet& commands, const About& about, const std::string& taken_back,
                   Does does) {
    const auto options = std::make_shared<ChoiceOptions>();
    auto command =
        commands.add(about, [options, does](Session& session) { return does(session, *options); });
    command.argument("PAIR", options->pair, "Its number");
    command.flag("--take-back", options->take_back, taken_back);
}

void add_facts(CommandSet& commands) {
    const auto options = std::make_shared<FactOptions>();
    auto command = commands.add(
        {"pairs facts", "Shows what a look is found by, or says it; what you say goes first.",
         "qturn pairs facts 'Low twisted bun' --family 'low bun' --as-read colour"},
        [options](Session& session) { return facts(session, *options); });
    command.argument("LOOK", options->look, "Name or number");
    add_fact_options(command, options->values, {facts_of_look.begin(), facts_of_look.end()});
    command.option("--as-read FACT", options->as_read,
                   "Leave this fact to the recipe again; once for each");
}

}  // namespace

void add_pair_choice_commands(CommandSet& commands) {
    const auto shown = std::make_shared<std::string>();
    auto show_command = commands.add(
        {"pairs show", "Shows a pair, and how alike its photos were taken.", "qturn pairs show 12"},
        [shown](Session& session) { return show(session.library(), *shown); });
    show_command.argument("PAIR", *shown, "Its number");
    add_choose(commands);
    add_take_back(commands,
                  {"pairs pin", "Keeps a pair with both its photos, whatever their tags say later.",
                   "qturn pairs pin 12"},
                  "Let the best photos stand again", keep_pinned);
    add_take_back(commands,
                  {"pairs refuse", "Leaves a pair out of all lists.", "qturn pairs refuse 12"},
                  "Let it be listed again", keep_refused);
    add_facts(commands);
}

}  // namespace quarterturn
