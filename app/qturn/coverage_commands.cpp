#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/looks/look_state.h"

namespace quarterturn {
namespace {

struct WaiveOptions {
    std::string look;
    std::string shot;
    std::string because;
    bool take_back = false;
};

std::string flaw_words(const std::vector<Flaw>& flaws) {
    std::vector<std::string> words;
    for (const Flaw flaw : flaws) words.emplace_back(word(flaw));
    return joined(words);
}

std::string detail_text(const CoverageLine& line, const LookState& state) {
    if (line.verdict == Coverage::waived) return line.waived_because;
    const auto photo =
        std::find_if(state.photos.begin(), state.photos.end(),
                     [&](const Photo& candidate) { return line.photo == candidate.id; });
    if (photo == state.photos.end()) return {};
    const std::string flaws = flaw_words(line.flaws);
    return photo->file.name + (flaws.empty() ? "" : ", " + flaws);
}

Reply coverage(Session& session, const std::string& name) {
    const LookState state = look_state(session.library(), find_look(session.library(), name).id);
    std::vector<std::vector<std::string>> rows;
    for (const CoverageLine& line : state.coverage.lines) {
        rows.push_back({shot_text(line.wanted.shot), std::string(word(line.wanted.need)),
                        std::string(word(line.verdict)), detail_text(line, state)});
    }
    Reply reply{columns(rows),
                {{"look", state.look.name},
                 {"look_id", state.look.id.value},
                 {"complete", state.coverage.complete},
                 {"next_shot", state.coverage.next_shot},
                 {"lines", list_json(state.coverage.lines)}}};
    reply.lines.push_back(state.coverage.next_shot);
    if (!state.coverage.complete) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply waive(Session& session, const WaiveOptions& options) {
    if (options.because.empty() != options.take_back) {
        throw WrongUse("Give the reason with --because, or --take-back.");
    }
    Library& library = session.library();
    const Look look = find_look(library, options.look);
    const Shot shot = shot_from(options.shot);
    library.history().record(
        (options.take_back ? "took back the waiver of " : "waived ") + shot_text(shot), [&] {
            options.take_back ? library.looks().take_back_waiver(look.id, shot)
                              : library.looks().waive(look.id, {shot, options.because});
        });
    return {{look.name + ": " + shot_text(shot) +
             (options.take_back ? " is wanted again." : " is waived: " + options.because)},
            {{"look", look.name},
             {"shot", shot_text(shot)},
             {"waived_because",
              options.take_back ? nlohmann::json() : nlohmann::json(options.because)}}};
}

}  // namespace

void add_coverage_commands(CommandSet& commands) {
    const auto look = std::make_shared<std::string>();
    auto coverage_command = commands.add(
        {"coverage",
         "Lays the look's shot list against its photos and says what to shoot next. Exit code 0 "
         "when complete, 3 when not.",
         "qturn coverage 'Low twisted bun'"},
        [look](Session& session) { return coverage(session, *look); });
    coverage_command.argument("LOOK", *look, "Name or number");

    const auto options = std::make_shared<WaiveOptions>();
    auto waive_command = commands.add(
        {"waive", "Waives a line of the shot list, with a reason that prints on the record.",
         "qturn waive 'Low twisted bun' 'before, back' --because 'She came with wet hair.'"},
        [options](Session& session) { return waive(session, *options); });
    waive_command.argument("LOOK", options->look, "Name or number");
    waive_command.argument("SHOT", options->shot, "Stage and angle, as in 'after, left'");
    waive_command.option("--because TEXT", options->because, "Your reason");
    waive_command.flag("--take-back", options->take_back, "It is wanted after all");
}

}  // namespace quarterturn
