#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/pair_filter_options.h"
#include "app/qturn/pair_reply.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/pairs.h"
#include "indexer/rules/pair_facts.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::string found_line(const PairWall& wall, std::size_t count) {
    if (count > 0) return count_text(count, "pair") + " found.";
    if (wall.pairs().empty()) {
        return "There are no pairs yet: one makes itself as soon as a look has a usable photo "
               "before "
               "and one after, tagged with the same angle.";
    }
    return "No pair was found: try fewer conditions, or see what there is with: qturn pairs count";
}

void tell_found(Library& library, const PairWall& wall, std::size_t count, Reply& reply) {
    const std::string why_old = why_pairs_are_old(library);
    const bool none_made = wall.pairs().empty() && !why_old.empty();
    if (!none_made) reply.lines.push_back(found_line(wall, count));
    if (!why_old.empty()) {
        reply.lines.push_back(why_old);
        reply.outcome = Outcome::needs_attention;
    }
    reply.data["not_made"] = why_old.empty() ? json() : json(why_old);
}

// Pairs that she pinned or chose photos for, and that nothing stands for any more.
void tell_lost_pairs(Library& library, const Names& names, Reply& reply) {
    json data = json::array();
    for (const Pair& pair : library.pairs().without_photos()) {
        const PairPlace& place = pair.made.place;
        reply.lines.push_back("Pair " + std::to_string(pair.id.value) + " (" +
                              names.look(place.look) + ", " + std::string(word(place.angle)) +
                              "), for which you chose photos, is not there now: they were "
                              "removed or tagged otherwise, and no others stand for them.");
        data.push_back({{"id", pair.id.value}, {"look_id", place.look.value}});
        reply.outcome = Outcome::needs_attention;
    }
    reply.data["lost"] = data;
}

Reply list(Session& session, const PairFilterOptions& options) {
    Library& library = session.library();
    const PairFilter filter = filter_from(library, options);
    const PairWall wall(library, date_of(local_now()));
    const auto found = wall.find(library, filter).pairs;
    const auto photos = photos_of(library, found);
    const Names names(library);
    std::map<LookId, Look> looks;
    for (Look& look : library.looks().all()) looks.emplace(look.id, std::move(look));
    std::vector<std::vector<std::string>> rows;
    json data = json::array();
    for (const Pair& pair : found) {
        rows.push_back(pair_cells(pair, names, photos, looks));
        data.push_back(to_json(pair, names, photos));
    }
    Reply reply{columns(rows), {{"filter", to_json(filter)}, {"pairs", data}}};
    tell_found(library, wall, found.size(), reply);
    if (filter == PairFilter{}) tell_lost_pairs(library, names, reply);
    return reply;
}

json counts_json(const FactCounts& counts) {
    json facts = json::object();
    for (const Fact fact : all_facts) {
        json values = json::array();
        const auto own = counts.find(fact);
        if (own != counts.end()) {
            for (const auto& [value, count] : in_reading_order(fact, own->second)) {
                values.push_back({{"value", value}, {"pairs", count}});
            }
        }
        facts[std::string(word(fact))] = values;
    }
    return facts;
}

Reply count(Session& session, const PairFilterOptions& options) {
    Library& library = session.library();
    const PairFilter filter = filter_from(library, options);
    const PairWall wall(library, date_of(local_now()));
    const auto found = wall.find(library, filter);
    std::vector<std::vector<std::string>> rows;
    for (const Fact fact : all_facts) {
        const auto own = found.counts.find(fact);
        if (own == found.counts.end()) continue;
        std::string name(word(fact));
        for (const auto& [value, pairs] : in_reading_order(fact, own->second)) {
            rows.push_back({std::exchange(name, {}), value, std::to_string(pairs)});
        }
    }
    Reply reply{columns(rows),
                {{"filter", to_json(filter)},
                 {"found", found.pairs.size()},
                 {"facts", counts_json(found.counts)}}};
    tell_found(library, wall, found.pairs.size(), reply);
    return reply;
}

struct KeepOptions {
    std::string name;
    PairFilterOptions filter;
};

std::string filter_text(const PairFilter& filter) {
    std::vector<std::string> parts;
    if (!filter.words.empty()) parts.push_back("words " + filter.words);
    for (const auto& [fact, values] : filter.values) {
        std::string either;
        for (const std::string& value : values) either += (either.empty() ? "" : " or ") + value;
        parts.push_back(std::string(word(fact)) + " " + either);
    }
    if (filter.refused) parts.emplace_back("refused");
    return joined(parts);
}

Reply keep(Session& session, const KeepOptions& options) {
    Library& library = session.library();
    const PairFilter filter = filter_from(library, options.filter);
    if (filter == PairFilter{}) {
        throw WrongUse("Say what to filter by, for example --family 'low bun'.");
    }
    library.history().record("kept the filter " + options.name, [&] {
        library.pair_filters().keep({options.name, filter});
    });
    return {{"Kept as '" + options.name + "': " + filter_text(filter) + "."},
            {{"name", options.name}, {"filter", to_json(filter)}}};
}

Reply filters(Session& session) {
    std::vector<std::vector<std::string>> rows;
    json data = json::array();
    for (const KeptPairFilter& kept : session.library().pair_filters().all()) {
        rows.push_back({kept.name, filter_text(kept.filter)});
        data.push_back({{"name", kept.name}, {"filter", to_json(kept.filter)}});
    }
    if (rows.empty()) rows.push_back({"No filter is kept. Keep one with: qturn pairs keep NAME"});
    return {columns(rows), {{"filters", data}}};
}

Reply forget(Session& session, const std::string& name) {
    Library& library = session.library();
    PairFilterTable table = library.pair_filters();
    if (!table.find(name)) {
        throw WrongUse("There is no filter '" + name + "'. See: qturn pairs filters");
    }
    library.history().record("forgot the filter " + name, [&] { table.remove(name); });
    return {{"No longer kept: " + name + "."}, {{"name", name}}};
}

void add_keep(CommandSet& commands) {
    const auto options = std::make_shared<KeepOptions>();
    auto command =
        commands.add({"pairs keep", "Keeps a filter under a name of your own.",
                      "qturn pairs keep 'Autumn buns' --family 'low bun' --season autumn"},
                     [options](Session& session) { return keep(session, *options); });
    command.argument("NAME", options->name, "What you call it; one of that name is replaced");
    add_filter_options(command, options->filter);
}

}  // namespace

void add_pair_commands(CommandSet& commands) {
    commands.group("pairs", "Before beside after, trial beside wedding day: made, found, chosen.");
    const auto listed = std::make_shared<PairFilterOptions>();
    auto list_command =
        commands.add({"pairs list", "Lists pairs of photos, the newest first; filters combine.",
                      "qturn pairs list comb --family 'low bun' --length 'to the shoulder blades'"},
                     [listed](Session& session) { return list(session, *listed); });
    add_filter_options(list_command, *listed);
    const auto counted = std::make_shared<PairFilterOptions>();
    auto count_command =
        commands.add({"pairs count", "Counts the pairs of each value under the other filters.",
                      "qturn pairs count --season autumn"},
                     [counted](Session& session) { return count(session, *counted); });
    add_filter_options(count_command, *counted);
    add_keep(commands);
    commands.add({"pairs filters", "Lists the filters that you kept.", "qturn pairs filters"},
                 filters);
    const auto name = std::make_shared<std::string>();
    auto forget_command = commands.add(
        {"pairs forget", "Keeps a filter no longer.", "qturn pairs forget 'Autumn buns'"},
        [name](Session& session) { return forget(session, *name); });
    forget_command.argument("NAME", *name, "What you called it");
}

}  // namespace quarterturn
