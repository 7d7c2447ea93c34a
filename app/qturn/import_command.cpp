#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/intake/import.h"

namespace quarterturn {
namespace {

struct ImportOptions {
    std::vector<std::string> folders;
    bool progress = false;
};

void refuse_missing(const std::vector<std::string>& folders) {
    for (const std::string& folder : folders) {
        if (!real_file_system().exists(folder)) {
            throw WrongUse("There is no folder or file " + folder +
                           ". Is the card or phone connected?");
        }
    }
}

nlohmann::json paths_json(const std::vector<Path>& paths) {
    auto list = nlohmann::json::array();
    for (const Path& path : paths) list.push_back(path.string());
    return list;
}

nlohmann::json refused_json(const std::vector<RefusedFile>& refused) {
    auto list = nlohmann::json::array();
    for (const RefusedFile& file : refused) {
        list.push_back({{"file", file.file.string()}, {"reason", file.reason}});
    }
    return list;
}

nlohmann::json numbers_json(const std::vector<PhotoId>& photos) {
    auto list = nlohmann::json::array();
    for (const PhotoId id : photos) list.push_back(id.value);
    return list;
}

std::vector<std::string> report_lines(const ImportReport& report) {
    std::vector<std::string> lines{count_text(report.imported.size(), "photo") + " brought in."};
    if (!report.already_here.empty()) {
        lines.push_back(count_text(report.already_here.size(), "photo") + " already here.");
    }
    if (!report.left_alone.empty()) {
        lines.push_back(count_text(report.left_alone.size(), "other file") + " left alone:");
        for (const Path& file : report.left_alone) lines.push_back("  " + file.string());
    }
    if (!report.refused.empty()) {
        lines.push_back(count_text(report.refused.size(), "file") + " could not be taken:");
        for (const RefusedFile& file : report.refused) {
            lines.push_back("  " + file.file.string() + ": " + file.reason);
        }
    }
    if (report.stopped) {
        lines.emplace_back("Stopped. What was brought in is kept; run the same again to go on.");
    }
    return lines;
}

Reply report_reply(const ImportReport& report) {
    Reply reply{report_lines(report),
                {{"imported", report.imported.size()},
                 {"imported_photos", numbers_json(report.imported)},
                 {"already_here", report.already_here.size()},
                 {"already_here_files", paths_json(report.already_here)},
                 {"left_alone", report.left_alone.size()},
                 {"left_alone_files", paths_json(report.left_alone)},
                 {"refused", refused_json(report.refused)},
                 {"stopped", report.stopped}}};
    if (report.stopped || !report.refused.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply import(Session& session, const ImportOptions& options) {
    refuse_missing(options.folders);
    Library& library = session.library();
    const StopOnSignal stop;
    const auto decoder = make_local_decoder();
    ImportWishes wishes;
    wishes.sources.assign(options.folders.begin(), options.folders.end());
    wishes.stop = stop.token();
    ProgressLine line(options.progress);
    wishes.progress = [&line](const ImportProgress& progress) {
        line.show({progress.done, progress.total, progress.left});
    };
    return report_reply(import_photos(library, *decoder, wishes));
}

}  // namespace

void add_import_command(CommandSet& commands) {
    const auto options = std::make_shared<ImportOptions>();
    auto command = commands.add(
        {"import",
         "Brings photos in from folders, walked whole. Originals are only read. Ctrl-C keeps what "
         "is done; run again, it goes on.",
         "qturn import /media/card ~/Pictures/trial"},
        [options](Session& session) { return import(session, *options); });
    command.argument("FOLDER", options->folders, "Folders, or single photos");
    command.flag("--progress", options->progress,
                 "Show how far it is, also when standard error is no terminal");
}

}  // namespace quarterturn
