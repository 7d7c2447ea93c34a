#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

Reply history_reply(const std::optional<std::string>& said, const std::string& done,
                    const std::string& nothing) {
    // She may mean what she said last, which may be none of these.
    const std::string not_these =
        "What the window changes is taken back and done again for a day; of commands, taggings, "
        "placings, clock shifts, moves into the bin, head points, and what you said of pairs and "
        "of looks.";
    if (!said) return {{nothing, not_these}, {{"done", nullptr}}};
    return {{done + ": " + *said, not_these}, {{"done", *said}}};
}

}  // namespace

void add_history_commands(CommandSet& commands) {
    commands.add(
        {"undo", "Takes back what was done last, by the window or by a command.", "qturn undo"},
        [](Session& session) {
            return history_reply(undo(session.library()), "Undone", "There is nothing to undo.");
        });
    commands.add({"redo", "Does again what was just undone.", "qturn redo"}, [](Session& session) {
        return history_reply(redo(session.library()), "Done again",
                             "There is nothing to do again.");
    });
}

}  // namespace quarterturn
