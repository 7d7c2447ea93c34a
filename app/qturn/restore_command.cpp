#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/backup/restore.h"
#include "indexer/disk/clock.h"

namespace quarterturn {
namespace {

struct RestoreOptions {
    std::string from;
    std::string to;
    std::string client;
    std::string records;
    bool progress = false;
};

Reply restore_reply(const RestoreReport& report) {
    const std::string files = count_text(static_cast<std::size_t>(report.files), "file");
    Reply reply{{report.stopped ? files + " restored. Stopped: it is no library yet; run the same "
                                          "again to go on."
                                : files + " restored and checked. The library lies in " +
                                      report.library.string() + "."},
                {{"library", report.library.string()},
                 {"records", report.records},
                 {"files", report.files},
                 {"problems", report.problems},
                 {"stopped", report.stopped}}};
    append(reply.lines, report.problems);
    if (report.stopped || !report.problems.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply restore_library(Session& session, const RestoreOptions& options) {
    session.unlock(options.from);
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    RestoreWishes wishes;
    wishes.from = options.from;
    wishes.to = options.to;
    wishes.client = options.client;
    wishes.records = options.records;
    wishes.now = local_now();
    wishes.stop = stop.token();
    wishes.progress = line.teller();
    return restore_reply(restore(real_file_system(), wishes));
}

}  // namespace

void add_restore_command(CommandSet& commands) {
    const auto options = std::make_shared<RestoreOptions>();
    auto command =
        commands.add({"restore",
                      "Makes a library again from a backup, in a new place; nothing is written "
                      "over. Ctrl-C stops it; run again, it goes on.",
                      "qturn restore '/media/drive/Quarterturn backup' --to ~/Quarterturn-again"},
                     [options](Session& session) { return restore_library(session, *options); });
    command.argument("BACKUP", options->from, "The folder of the backup");
    command.required_option("--to NEW", options->to, "A new or empty folder");
    command.option("--client CLIENT", options->client,
                   "Only what is hers, by her name: a library of her alone");
    command.option("--records TIME", options->records,
                   "The newest records made by then (UTC), such as 2026-11-07; else of all");
    command.flag("--progress", options->progress,
                 "Show how far it is, also when standard error is no terminal");
}

}  // namespace quarterturn
