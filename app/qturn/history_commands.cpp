#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/say.h"
#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

Reply turned_reply(const Turned& turned, const std::string& done) {
    Reply reply{{done + ": " + turned.said},
                {{"done", turned.said}, {"photos_gone", turned.photos_gone}}};
    if (turned.photos_gone > 0) {
        reply.lines.push_back(count_text(static_cast<std::size_t>(turned.photos_gone), "photo") +
                              " of it gone for good.");
    }
    return reply;
}

Reply stop_reply(Library& library, const Turned& stop) {
    std::string words = "What you did last cannot be undone: " + stop.said + ".";
    if (library.history().can_undo()) words += " Undo again takes back what was before it.";
    return {{words}, {{"done", nullptr}, {"stands", stop.said}}, Outcome::failed};
}

Reply undo_last(Session& session) {
    const auto undone = undo(session.library());
    if (!undone) return {{"There is nothing to undo."}, {{"done", nullptr}, {"stands", nullptr}}};
    if (undone->stands) return stop_reply(session.library(), *undone);
    Reply reply = turned_reply(*undone, "Undone");
    reply.data["stands"] = nullptr;
    return reply;
}

Reply redo_last(Session& session) {
    const auto redone = redo(session.library());
    if (!redone) return {{"There is nothing to do again."}, {{"done", nullptr}}};
    return turned_reply(*redone, "Done again");
}

}  // namespace

void add_history_commands(CommandSet& commands) {
    commands.add(
        {"undo", "Takes back what was done last, by the window or by a command.", "qturn undo"},
        undo_last);
    commands.add({"redo", "Does again what was just undone.", "qturn redo"}, redo_last);
}

}  // namespace quarterturn
