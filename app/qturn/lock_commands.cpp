#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/lock_status.h"
#include "app/qturn/out_file.h"
#include "app/qturn/passphrase.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/backup/copies_to_unlock.h"
#include "indexer/backup/recovery_key_place.h"
#include "indexer/disk/clock.h"
#include "indexer/disk/lines_by_reason.h"
#include "indexer/sheet/recovery_key_sheet.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_library.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct LockOptions {
    std::string new_passphrase_file;
    std::string recovery_key_out;
    bool replace = false;
    bool progress = false;
};

constexpr auto before_is_readable =
    "Backups made before are not locked: make a new one in a new folder, and remove those. What a "
    "disk held before may still be found in its free space.";

// Opened for itself, since it is to be closed when it is locked.
void refuse_bad_place_for_key(const Session& session, const LockOptions& options) {
    Library library = Library::open_or_look(session.folder());
    const auto reason = reason_against_recovery_key_in(library, options.recovery_key_out);
    if (!reason.empty()) throw WrongUse(reason);
}

void write_recovery_key(Session& session, const std::string& key, const LockOptions& options) {
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    const RecoveryKeyPage page{
        key, std::filesystem::absolute(session.folder()), date_of(local_now()), {}};
    write_pdf(recovery_key_sheet(page, *ruler, Paper::a4), *decoder, real_file_system(),
              options.recovery_key_out);
}

std::vector<std::string> recovery_key_lines(const std::string& key, const LockOptions& options) {
    return {"Recovery key: " + key,
            "It is on the page in " + options.recovery_key_out +
                ": print it, put it away apart from the computer, and remove the file."};
}

Reply worked_reply(const LockReport& report, const std::string& done) {
    const std::string files = count_text(static_cast<std::size_t>(report.files), "file");
    Reply reply{{report.stopped ? files + " done. Stopped: run any command to go on."
                                : done + ' ' + files + " and the records were rewritten."},
                {{"files", report.files},
                 {"problems", reasons_of(report.problems)},
                 {"stopped", report.stopped}}};
    append(reply.lines, lines_by_reason(report.problems));
    if (report.stopped || !report.problems.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

// Before a page with a new recovery key is written.
void refuse_second_lock(FileSystem& disk, const Path& folder) {
    const auto lock = read_lock(disk, folder);
    if (!lock) return;
    refuse_lock_on_plain_library(disk, folder, *lock);
    if (lock->state == LockState::locked) throw StoreError("This library is locked already.");
    throw StoreError(
        "This library was being locked or unlocked for good, which was interrupted: run another "
        "command, such as qturn photos, to go on.");
}

// Of two at once, one is put on. A lock that cannot be read may be this one.
bool may_be_put_on(const NewLock& lock, const Path& folder) try {
    const auto there = read_lock(real_file_system(), folder);
    return there && there->mark == lock.file.mark;
} catch (const std::exception&) {
    return true;
}

// The page would open nothing.
LockReport lock_or_drop_page(Session& session, const NewLock& lock, const LockOptions& options,
                             const LockWishes& wishes) try {
    return lock_library(real_file_system(), session.folder(), lock, wishes);
} catch (const std::exception&) {
    if (!may_be_put_on(lock, session.folder())) {
        real_file_system().remove(options.recovery_key_out);
    }
    throw;
}

Reply set_lock(Session& session, const LockOptions& options) {
    refuse_bad_pdf(session, options.recovery_key_out, options.replace);
    refuse_second_lock(real_file_system(), session.folder());
    refuse_bad_place_for_key(session, options);
    const NewLock lock = new_lock(asked_new_passphrase(options.new_passphrase_file));
    write_recovery_key(session, lock.recovery_key, options);
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    Reply reply =
        worked_reply(lock_or_drop_page(session, lock, options, {line.counter(), stop.token()}),
                     "The library is locked.");
    reply.data["recovery_key_file"] = options.recovery_key_out;
    append(reply.lines, recovery_key_lines(lock.recovery_key, options));
    reply.lines.emplace_back(before_is_readable);
    return reply;
}

Reply change(Session& session, const LockOptions& options) {
    const KeysInHand keys = session.unlocked_keys();
    change_passphrase(real_file_system(), session.folder(), keys,
                      asked_new_passphrase(options.new_passphrase_file));
    return {{"The passphrase is changed. A backup opens with the one before until it is made "
             "again."},
            {{"changed", true}}};
}

Reply new_recovery_key(Session& session, const LockOptions& options) {
    refuse_bad_pdf(session, options.recovery_key_out, options.replace);
    const KeysInHand keys = session.unlocked_keys();
    refuse_bad_place_for_key(session, options);
    std::string key;
    renew_recovery_key(real_file_system(), session.folder(), keys, [&](const std::string& made) {
        write_recovery_key(session, made, options);
        key = made;
    });
    Reply reply{recovery_key_lines(key, options),
                {{"recovery_key_file", options.recovery_key_out}}};
    reply.lines.emplace_back(
        "The recovery key before opens the library no longer; a backup opens with it until it is "
        "made again.");
    return reply;
}

Reply remove_lock(Session& session, const LockOptions& options) {
    const KeysInHand keys = session.keys_of_left_lock();
    FileSystem& disk = real_file_system();
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    return worked_reply(unlock_for_good(disk, session.folder(), keys,
                                        {line.counter(), stop.token(),
                                         copies_to_unlock(disk, session.folder())}),
                        "The library has no lock any longer.");
}

using LockRun = Reply (*)(Session&, const LockOptions&);

std::pair<Command, std::shared_ptr<LockOptions>> add(CommandSet& commands, const About& about,
                                                     LockRun run) {
    const auto options = std::make_shared<LockOptions>();
    return {
        commands.add(about, [options, run](Session& session) { return run(session, *options); }),
        options};
}

void add_new_passphrase(Command& command, LockOptions& options) {
    command.option("--new-passphrase-file FILE", options.new_passphrase_file,
                   "A file whose first line is the new passphrase; else it is asked for twice");
}

void add_recovery_key(Command& command, LockOptions& options) {
    command.required_option("--recovery-key-out FILE", options.recovery_key_out,
                            "Where the page with the recovery key is written (.pdf)");
    command.flag("--replace", options.replace, "Write over that file");
}

void add_progress(Command& command, LockOptions& options) {
    command.flag("--progress", options.progress,
                 "Show how far it is, also when standard error is no terminal");
}

}  // namespace

void add_lock_commands(CommandSet& commands) {
    commands.group("lock", "Encrypts photos and records at rest, under a passphrase.");
    auto [set, set_options] =
        add(commands,
            {"lock set",
             "Locks the library: encrypts its photos and records under a passphrase of at least "
             "twelve characters, and writes a recovery key to print. Ctrl-C stops it; the next "
             "command goes on.",
             "qturn lock set --recovery-key-out ~/recovery-key.pdf"},
            set_lock);
    add_new_passphrase(set, *set_options);
    add_recovery_key(set, *set_options);
    add_progress(set, *set_options);
    auto [changed, change_options] =
        add(commands, {"lock change", "Changes the passphrase.", "qturn lock change"}, change);
    add_new_passphrase(changed, *change_options);
    auto [key, key_options] =
        add(commands,
            {"lock recovery-key",
             "Makes a new recovery key and writes it as a page; the one before opens the library "
             "no longer.",
             "qturn lock recovery-key --recovery-key-out ~/recovery-key.pdf"},
            new_recovery_key);
    add_recovery_key(key, *key_options);
    auto [removed, remove_options] =
        add(commands,
            {"lock remove",
             "Unlocks the library for good: photos and records lie there as plain files again.",
             "qturn lock remove"},
            remove_lock);
    add_progress(removed, *remove_options);
    commands.add(
        {"lock status", "Says whether the library is locked, and what of it is not as the rest is.",
         "qturn lock status"},
        lock_status);
}

}  // namespace quarterturn
