#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/import_words.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/backup/safe_to_delete.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct SafeOptions {
    std::vector<std::string> folders;
    bool progress = false;
};

std::string_view lack_word(Lacks lacks) {
    switch (lacks) {
        case Lacks::library:
            return "not in the library";
        case Lacks::whole_file_in_library:
            return "damaged in the library";
        case Lacks::backup:
            return "in no backup";
        case Lacks::backup_not_connected:
            return "in a backup that is not connected";
        case Lacks::whole_file_in_backup:
            return "damaged in the backup";
        case Lacks::backup_on_card:
            return "in a backup on the same card";
        case Lacks::backup_on_other_disk:
            return "in a backup on the library's own disk";
        case Lacks::in_bin:
            return "in the bin";
        case Lacks::photo:
            return "no photo";
        case Lacks::reading:
            return "could not be read";
    }
    return {};
}

bool on_own_disk(const FileToKeep& file) {
    return file.lacks == Lacks::backup_on_other_disk;
}

Reply safe_reply(const SafeToDelete& found) {
    Reply reply{
        {count_text(found.safe.size(), "photo") + (found.safe.size() == 1 ? " is" : " are") +
         " whole in the library and in a connected backup on another disk, and safe to delete. "
         "Nothing was deleted."},
        {{"safe", paths_json(found.safe)},
         {"on_own_disk", std::ranges::count_if(found.to_keep, on_own_disk)},
         {"keep", json::array()},
         {"all_safe", found.all_safe()},
         {"stopped", found.stopped}}};
    if (!found.to_keep.empty()) {
        reply.lines.push_back(count_text(found.to_keep.size(), "file") + " to keep:");
    }
    for (const FileToKeep& file : found.to_keep) {
        reply.lines.push_back("  " + sentence(file));
        reply.data["keep"].push_back(
            {{"file", file.file.string()}, {"lacks", lack_word(file.lacks)}});
    }
    if (found.stopped) reply.lines.emplace_back("Stopped: keep what was not looked at.");
    if (!found.all_safe()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply look_through(Session& session, const SafeOptions& options) {
    Library& library = session.library();
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    SafeWishes wishes;
    wishes.sources.assign(options.folders.begin(), options.folders.end());
    wishes.stop = stop.token();
    wishes.progress = line.teller();
    return safe_reply(safe_to_delete(library, wishes));
}

}  // namespace

void add_safe_to_delete_command(CommandSet& commands) {
    const auto options = std::make_shared<SafeOptions>();
    auto command =
        commands.add({"safe-to-delete",
                      "Says which photos of a card may be deleted there: those that are whole in "
                      "the library and in a connected backup on another disk. Deletes "
                      "nothing.",
                      "qturn safe-to-delete /media/card"},
                     [options](Session& session) { return look_through(session, *options); });
    command.argument("FOLDER", options->folders, "Folders, or single photos");
    command.flag("--progress", options->progress,
                 "Show how far it is, also when standard error is no terminal");
}

}  // namespace quarterturn
