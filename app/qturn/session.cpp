#include "app/qturn/session.h"

#include <cstdlib>
#include <iostream>

#include "app/qturn/passphrase.h"
#include "app/qturn/progress.h"
#include "app/qturn/reply.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/backup/copies_to_unlock.h"
#include "indexer/disk/clock.h"
#include "indexer/disk/lines_by_reason.h"
#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/erase.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_library.h"

namespace quarterturn {
namespace {

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string{} : std::string(value);
}

void complain(const std::vector<std::string>& sentences) {
    for (const std::string& sentence : sentences) std::cerr << safe_text(sentence) << '\n';
}

// What an interrupted erasure has left, and what has lain in the bin for long enough. Where it
// cannot be finished yet, that is said, and the next command tries.
void go_on_erasing(Library& library) try {
    complain(finish_erasures(library));
    complain(let_go_of_bin(library, date_of(local_now())).left);
} catch (const std::runtime_error& error) {
    if (ErasureTable(library.database()).any_unfinished()) {
        complain(
            {"An erasure, or emptying the bin, is not finished: " + std::string(error.what())});
    }
}

}  // namespace

Path Session::folder() const {
    if (!wishes_.library.empty()) return wishes_.library;
    if (const std::string named = environment("QUARTERTURN_LIBRARY"); !named.empty()) return named;
    if (const std::string home = environment("HOME"); !home.empty()) {
        return Path(home) / "Quarterturn";
    }
    throw WrongUse("Which library? Name its folder with --library.");
}

void Session::unlock(const Path& place) {
    const auto lock = read_lock(real_file_system(), place);
    if (!lock) return;
    if (!key_ring::with_mark(lock->mark)) {
        refuse_lock_on_plain_library(real_file_system(), place, *lock);
    }
    unlock(place, *lock);
}

void Session::unlock(const Path& place, const LockFile& lock) {
    if (key_ring::with_mark(lock.mark)) return;
    const std::string file = wishes_.passphrase_file.empty()
                                 ? environment("QUARTERTURN_PASSPHRASE_FILE")
                                 : wishes_.passphrase_file;
    key_ring::add(place,
                  keys_from(lock, asked_passphrase("Passphrase of " + place.string(), file)));
}

KeysInHand Session::unlocked_keys() {
    const auto lock = read_lock(real_file_system(), folder());
    if (!lock) {
        refuse_lost_lock_of_library(real_file_system(), folder());
        throw StoreError("The library in " + folder().string() + " is not locked.");
    }
    unlock(folder());
    return key_ring::with_mark(lock->mark);
}

// On a disk that takes nothing it is said again.
void Session::note_what_was_said() try {
    if (library_ && !library_->only_to_look()) note_told_of_erasures(*library_);
} catch (const StoreError&) {
    return;
}

KeysInHand Session::keys_without_asking() try {
    const bool given =
        !wishes_.passphrase_file.empty() || !environment("QUARTERTURN_PASSPHRASE_FILE").empty();
    return given ? unlocked_keys() : nullptr;
} catch (const LockError&) {
    return nullptr;
}

KeysInHand Session::keys_of_left_lock() {
    FileSystem& disk = real_file_system();
    const auto lock = read_lock(disk, folder()) ? std::nullopt : read_left_lock(disk, folder());
    if (!lock) return unlocked_keys();
    unlock(folder(), *lock);
    return key_ring::with_mark(lock->mark);
}

// What was interrupted of "lock set" or "lock remove".
void Session::go_on_locking(const Path& place) {
    const auto lock = read_lock(real_file_system(), place);
    if (!lock || lock->state == LockState::locked) return;
    refuse_records_of_other_keys(real_file_system(), place, unlocked_keys());
    std::cerr << (lock->state == LockState::locking
                      ? "Locking this library was interrupted: going on with that first.\n"
                      : "Unlocking this library for good was interrupted: going on with that "
                        "first.\n");
    const StopOnSignal stop;
    ProgressLine line(false);
    const LockReport report =
        finish_locking(real_file_system(), place, unlocked_keys(),
                       {line.counter(), stop.token(), copies_to_unlock(real_file_system(), place)});
    const std::vector<std::string> sentences = sentences_by_reason(report.problems);
    complain(sentences);
    if (sentences.size() < report.problems.size()) {
        complain({"qturn lock status names each file that was left."});
    }
}

std::string Session::why_only_to_look() const {
    return library_ ? library_->why_only_to_look() : std::string{};
}

Library& Session::library() {
    if (!library_) {
        if (!real_file_system().exists(folder())) {
            throw StoreError("There is no library in " + folder().string() +
                             ". Make one with: qturn init --library FOLDER, or name another with "
                             "--library.");
        }
        unlock(folder());
        go_on_locking(folder());
        library_ = Library::open_or_look(folder());
        if (std::string older = library_->older_records(); !older.empty()) complain({older});
        if (!library_->only_to_look()) {
            clear_left_incoming(*library_);
            go_on_erasing(*library_);
        }
    }
    return *library_;
}

}  // namespace quarterturn
