#include <algorithm>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/import_words.h"
#include "app/qturn/parse.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "app/qturn/to_json.h"
#include "indexer/backup/backup_words.h"
#include "indexer/backup/erased_there.h"
#include "indexer/backup/reminder.h"
#include "indexer/disk/clock.h"

namespace quarterturn {
namespace {

using nlohmann::json;

json backup_json(const Backup& backup) {
    return {{"id", backup.id.value},
            {"folder", backup.folder.string()},
            {"drive", backup.volume},
            {"at", backup.at ? json(iso_text(*backup.at)) : json()},
            {"photos", backup.photos}};
}

std::string counted(std::int64_t count, std::string_view one, std::string_view many = {}) {
    return count_text(static_cast<std::size_t>(count), one, many);
}

std::vector<std::string> done_lines(const BackupReport& report) {
    if (report.stopped) {
        return {counted(report.copied, "file") +
                " copied. Stopped: the backup before is as it was; run the same again to go on."};
    }
    const bool nothing_new = report.copied + report.renamed + report.removed == 0 &&
                             report.records.empty() && report.problems.empty();
    std::vector<std::string> lines{
        (nothing_new ? "Nothing was new. " : counted(report.copied, "file") + " copied. ") +
        counted(report.backup.photos, "photo") + (report.backup.photos == 1 ? " is" : " are") +
        " safe in " + report.backup.folder.string() + "."};
    if (report.renamed > 0) lines.push_back(counted(report.renamed, "file") + " moved there too.");
    if (report.removed > 0) {
        lines.push_back(counted(report.removed, "file") +
                        " removed there, which the library does not have any longer.");
    }
    if (report.records_erased > 0) {
        lines.push_back(counted(report.records_erased, "older copy", "older copies") +
                        " of the records removed, since somebody was erased since.");
    }
    return lines;
}

json staying_json(const std::vector<RefusedFile>& staying) {
    json files = json::array();
    for (const RefusedFile& file : staying) {
        files.push_back({{"file", file.file.string()}, {"reason", file.reason}});
    }
    return files;
}

Reply back_up_reply(const BackupReport& report) {
    Reply reply{done_lines(report),
                {{"backup", backup_json(report.backup)},
                 {"copied", report.copied},
                 {"renamed", report.renamed},
                 {"removed", report.removed},
                 {"lost_there", report.lost_there},
                 {"records", report.records},
                 {"records_erased", report.records_erased},
                 {"problems", report.problems},
                 {"gone", paths_json(report.gone)},
                 {"staying", staying_json(report.staying)},
                 {"on_same_disk", report.on_same_disk},
                 {"stopped", report.stopped}}};
    append(reply.lines, lacking_lines(report));
    append(reply.lines, lost_there_lines(report));
    append(reply.lines, gone_lines(report));
    append(reply.lines, staying_lines(report));
    append(reply.lines, same_disk_lines(report));
    const bool all_well = report.problems.empty() && report.lost_there.empty() &&
                          report.gone.empty() && report.staying.empty();
    if (report.stopped || !all_well) reply.outcome = Outcome::needs_attention;
    return reply;
}

struct BackupOptions {
    std::string to;
    bool read_all = false;
    bool progress = false;
};

Reply back_up_now(Session& session, const BackupOptions& options) {
    Library& library = session.library();
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    BackupWishes wishes;
    wishes.to = options.to;
    wishes.read_all = options.read_all;
    wishes.now = local_now();
    wishes.utc = utc_now();
    wishes.stop = stop.token();
    wishes.progress = line.teller();
    return back_up_reply(back_up(library, wishes));
}

struct BackupsOptions {
    Text forget;
    Text on;
};

std::optional<Backup> forget(Library& library, const Text& number) {
    if (!number) return std::nullopt;
    const std::vector<Backup> known = library.backups().all();
    const BackupId id{number_from(*number, *number)};
    library.backups().forget(id);
    const auto found = std::ranges::find(known, id, &Backup::id);
    return found == known.end() ? std::nullopt : std::optional(*found);
}

std::vector<std::string> forgotten_lines(const std::optional<Backup>& forgotten) {
    if (!forgotten) return {};
    return {"The backup in " + forgotten->folder.string() +
            " is forgotten. Nothing was removed there, and that folder takes no more backups of "
            "this library unless it is emptied first."};
}

Reply list_backups(Session& session, const BackupsOptions& options) {
    Library& library = session.library();
    const auto forgotten = forget(library, options.forget);
    const Date on = options.on ? date_from(*options.on) : date_of(local_now());
    const auto reminder = backup_reminder(library, on);
    Reply reply{forgotten_lines(forgotten),
                {{"backups", json::array()},
                 {"reminder", reminder ? json(*reminder) : json()},
                 {"forgotten", forgotten ? backup_json(*forgotten) : json()}}};
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> erased;
    for (const Backup& backup : library.backups().all()) {
        rows.push_back({std::to_string(backup.id.value), counted(backup.photos, "photo"),
                        place_words(backup)});
        const std::string words = erased_there_words(library, backup);
        if (!words.empty()) erased.push_back(backup.folder.string() + ": " + words);
        json told = backup_json(backup);
        told["erasure_unfinished"] = !words.empty();
        reply.data["backups"].push_back(std::move(told));
    }
    append(reply.lines, columns(rows));
    append(reply.lines, erased);
    if (!erased.empty()) reply.outcome = Outcome::needs_attention;
    if (rows.empty()) reply.lines.emplace_back("There is no backup. Make one with: qturn backup");
    if (reminder) {
        reply.lines.push_back(*reminder);
        reply.outcome = Outcome::needs_attention;
    }
    return reply;
}

}  // namespace

void add_backup_commands(CommandSet& commands) {
    const auto options = std::make_shared<BackupOptions>();
    auto command = commands.add(
        {"backup",
         "Makes a backup of the library in a folder elsewhere, of plain files; copies only what is "
         "new. Ctrl-C keeps the backup before; run again, it goes on.",
         "qturn backup '/media/drive/Quarterturn backup'"},
        [options](Session& session) { return back_up_now(session, *options); });
    command.argument("TO", options->to, "A new or empty folder on another drive, or the last one");
    command.flag("--read-all", options->read_all,
                 "Read every file there too, and write anew what is damaged");
    command.flag("--progress", options->progress,
                 "Show how far it is, also when standard error is no terminal");

    const auto list_options = std::make_shared<BackupsOptions>();
    auto list = commands.add(
        {"backups", "Lists the backups that were made, and says when a new one is due.",
         "qturn backups"},
        [list_options](Session& session) { return list_backups(session, *list_options); });
    list.option("--forget NUMBER", list_options->forget,
                "A backup that was lost or destroyed: it is named no longer");
    list.option("--on YYYY-MM-DD", list_options->on, "On which day; today unless named");
}

}  // namespace quarterturn
