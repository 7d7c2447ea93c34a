#include <condition_variable>
#include <mutex>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/import_words.h"
#include "app/qturn/preview_reply.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/intake/arriving.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

struct ImportOptions {
    std::vector<std::string> folders;
    bool progress = false;
    bool preview = false;
    bool watch = false;
};

void refuse_missing(const std::vector<std::string>& folders) {
    for (const std::string& folder : folders) {
        if (!real_file_system().exists(folder)) {
            throw WrongUse("There is no folder or file " + folder +
                           ". Is the card or phone connected?");
        }
    }
}

nlohmann::json numbers_json(const std::vector<PhotoId>& photos) {
    auto list = nlohmann::json::array();
    for (const PhotoId id : photos) list.push_back(id.value);
    return list;
}

std::size_t photos_to_place(Library& library, const ImportReport& report) {
    return static_cast<std::size_t>(std::ranges::count_if(report.imported, [&](PhotoId id) {
        const auto photo = library.photos().find(id);
        return photo && !photo->tags.sitting;
    }));
}

std::vector<std::string> report_lines(const ImportReport& report, std::size_t to_place) {
    std::vector<std::string> lines{count_text(report.imported.size(), "photo") + " brought in."};
    if (to_place > 0) {
        lines.push_back(count_text(to_place, "photo") +
                        " of these fit no sitting, or more than one: qturn sort lists them.");
    }
    if (!report.already_here.empty()) {
        lines.push_back(count_text(report.already_here.size(), "photo") + " already here.");
    }
    append(lines, in_bin_lines(report.in_bin.size()));
    if (!report.put_back.empty()) {
        lines.push_back(count_text(report.put_back.size(), "photo") +
                        " of these put back: the library's own file was gone or had changed.");
    }
    for (const Path& file : report.set_aside) {
        lines.push_back("  The changed one is kept as " + file.string());
    }
    if (!report.left_alone.empty()) {
        lines.push_back(count_text(report.left_alone.size(), "other file") + " left alone:");
        for (const Path& file : report.left_alone) lines.push_back("  " + file.string());
    }
    append(lines, refused_lines(report.refused));
    append(lines, not_moved_lines(report.not_moved));
    if (report.stopped) {
        lines.emplace_back("Stopped. What was brought in is kept; run the same again to go on.");
    }
    return lines;
}

// Somebody else's work, which came in among her own photos.
std::vector<std::string> brought_lines(const std::vector<std::string>& names) {
    if (names.empty()) return {};
    return {joined(names) + (names.size() == 1 ? " is kept" : " are kept") +
            " as somebody else's work, among the pictures that clients brought, and never passed "
            "on: put it in the bin with qturn bin add, or see qturn inspiration list."};
}

Reply report_reply(Library& library, const ImportReport& report) {
    const std::size_t to_place = photos_to_place(library, report);
    const auto brought = library.inspirations().names_among(report.imported);
    Reply reply{report_lines(report, to_place),
                {{"imported", report.imported.size()},
                 {"imported_photos", numbers_json(report.imported)},
                 {"to_place", to_place},
                 {"already_here", report.already_here.size()},
                 {"already_here_files", paths_json(report.already_here)},
                 {"in_bin", report.in_bin.size()},
                 {"put_back", report.put_back.size()},
                 {"set_aside", paths_json(report.set_aside)},
                 {"left_alone", report.left_alone.size()},
                 {"left_alone_files", paths_json(report.left_alone)},
                 {"refused", refused_json(report.refused)},
                 {"not_moved", refused_json(report.not_moved)},
                 {"brought_by_clients", brought},
                 {"stopped", report.stopped}}};
    append(reply.lines, brought_lines(brought));
    if (report.stopped || !report.refused.empty() || !report.not_moved.empty() ||
        !report.set_aside.empty() || !brought.empty())
        reply.outcome = Outcome::needs_attention;
    return reply;
}

void wait_or_stop(const std::stop_token& stop) {
    std::mutex mutex;
    std::condition_variable_any stopped;
    std::unique_lock lock(mutex);
    stopped.wait_for(lock, stop, between_looks, [] { return false; });
}

template <class Item>
void append_to(std::vector<Item>& all, std::vector<Item>&& more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()),
               std::make_move_iterator(more.end()));
}

// A file that paused while it was written looks broken at first.
bool taken_later(Library& library, const RefusedFile& refused) try {
    const FileState state = library.disk().state(refused.file);
    return library.seen().recall(refused.file, state).has_value();
} catch (const DiskError&) {
    return false;
}

// Takes in what arrives until Ctrl-C, which is no interruption then.
ImportReport watch(Library& library, Decoder& decoder, const ImportWishes& wishes) {
    ArrivingFiles arriving(wishes.sources);
    ImportReport all;
    while (!wishes.stop.stop_requested()) {
        ImportReport report = import_arrived(library, decoder, arriving, wishes);
        if (!report.imported.empty()) all.not_moved = std::move(report.not_moved);
        append_to(all.imported, std::move(report.imported));
        append_to(all.already_here, std::move(report.already_here));
        append_to(all.in_bin, std::move(report.in_bin));
        append_to(all.put_back, std::move(report.put_back));
        append_to(all.set_aside, std::move(report.set_aside));
        append_to(all.left_alone, std::move(report.left_alone));
        append_to(all.refused, std::move(report.refused));
        wait_or_stop(wishes.stop);
    }
    std::erase_if(all.refused, [&](const RefusedFile& file) { return taken_later(library, file); });
    return all;
}

Reply import(Session& session, const ImportOptions& options) {
    refuse_missing(options.folders);
    Library& library = session.library();
    const StopOnSignal stop;
    const auto decoder = make_confined_decoder();
    ImportWishes wishes;
    wishes.sources.assign(options.folders.begin(), options.folders.end());
    wishes.stop = stop.token();
    ProgressLine line(options.progress);
    wishes.progress = line.teller();
    if (options.preview) return preview_reply(library, preview_import(library, wishes));
    if (options.watch) return report_reply(library, watch(library, *decoder, wishes));
    return report_reply(library, import_photos(library, *decoder, wishes));
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
    command.flag("--preview", options->preview,
                 "Say what would be brought in and where it would fall; copy nothing");
    command.flag("--watch", options->watch,
                 "Go on taking in what arrives, each file when it is whole, until Ctrl-C");
}

}  // namespace quarterturn
