#include "indexer/store/lock_fits.h"

#include <algorithm>
#include <bitset>

#include "indexer/lock/locked_page.h"
#include "indexer/store/lock_leftovers.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/lost_lock.h"
#include "indexer/store/past_lock.h"
#include "indexer/store/recorded_and_missing.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_watch.h"

namespace quarterturn {
namespace {

// https://sqlite.org/fileformat2.html#magic_header_string
constexpr std::string_view plain_front{"SQLite format 3\0", 16};

Path records_in(const Path& folder) {
    return folder / records_file_name;
}

bool opens_with(const LibraryKeys& keys, std::size_t number, const Bytes& records) {
    std::array<unsigned char, page_bytes> page{};
    const std::size_t at = (number - 1) * page.size();
    if (records.size() < at + page.size()) return false;
    const auto* const from = reinterpret_cast<const unsigned char*>(records.data()) + at;
    std::copy_n(from, page.size(), page.begin());
    return open_page(keys, PageOf::records, number, page);
}

// The power may have torn the first page, which the log then holds whole; not all of them.
bool any_page_opens_with(const LibraryKeys& keys, const Path& records) {
    const Bytes all = raw_records(records);
    for (std::size_t number = 1; number * page_bytes <= all.size(); ++number) {
        if (opens_with(keys, number, all)) return true;
    }
    return false;
}

// What is sealed cannot be told from chance: of 4096 such bytes nearly all values are among them,
// and of a first page that SQLite wrote, mostly words and zeroes, not half.
bool looks_sealed(const Bytes& page) {
    constexpr std::size_t values_of_chance = 200;
    std::bitset<256> seen;
    for (const std::byte byte : page) seen.set(std::to_integer<std::size_t>(byte));
    return page.size() == page_bytes && seen.count() >= values_of_chance;
}

StoreError lock_of_another_library(const Path& folder) {
    return StoreError(
        (folder / lock_file_name).string() +
        " belongs to another library, and the records of this one do not open with it: put the "
        "right one back. A backup of this library holds a copy of it, beside READ ME.txt. It opens "
        "with the passphrase that the copy was made with, or with the recovery key. Nothing was "
        "changed.");
}

StoreError lock_without_a_locked_library(const Path& folder) {
    return StoreError((folder / lock_file_name).string() +
                      " belongs to another library, and this one is not locked: move lock.json out "
                      "of the folder, and open it again. Nothing was changed.");
}

StoreError records_of_others_under_lock(const Path& folder) {
    return StoreError(
        records_in(folder).string() +
        " is damaged, or was put there from elsewhere: it does not open with the key that the "
        "photos beside it open with. Leave the folder as it is, and make the library again from a "
        "backup in a new place, with qturn restore or on the window's first page. Nothing was "
        "changed.");
}

// As when the lock.json of a backup is put back while the library is being unlocked.
StoreError plain_records_under_lock(const Path& folder) {
    return StoreError(
        records_in(folder).string() +
        " is not locked, and the photos beside it are: unlocking the library for good was "
        "interrupted, and goes on with qturn lock remove. Where that file was put there from "
        "elsewhere, make the library again from a backup in a new place instead, with qturn "
        "restore or on the window's first page. Nothing was changed.");
}

// Where the records are plain, and what is locked beside them is not of these keys.
StoreError lock_of_another_on_half(const Path& folder, const Path& locked) {
    return StoreError(
        (folder / lock_file_name).string() +
        " belongs to another library: what is locked in this one, such as " +
        locked.lexically_relative(folder).string() +
        ", does not open with it. Move it to where it belongs. Where this library was being locked "
        "or unlocked for good, copy its own lock.json into it from the newest backup, where it "
        "lies beside READ ME.txt, and go on with qturn lock remove. Nothing was changed.");
}

StoreError misfit(FileSystem& disk, const Path& folder, const KeysInHand& keys, bool plain) {
    if (holds_names_locked_with(disk, folder, keys)) {
        return plain ? plain_records_under_lock(folder) : records_of_others_under_lock(folder);
    }
    return plain ? lock_without_a_locked_library(folder) : lock_of_another_library(folder);
}

bool opens_at(LockedFileSystem& locked, const Path& folder, const Path& top) {
    if (!locked.is_folder(top)) return is_sealed(locked, top);
    return std::ranges::any_of(locked.list(top), [&](const Path& entry) {
        return !stays_as_it_is(entry.lexically_relative(folder));
    });
}

// A version before noted no mark.
bool may_be_half_of(FileSystem& disk, const Path& folder, const LockFile& lock) {
    return noted_lock_mark(folder) == lock.mark || !locked_without_lock(disk, folder).empty();
}

}  // namespace

bool begins_as_plain_records(const Bytes& front) {
    const std::string_view text(reinterpret_cast<const char*>(front.data()), front.size());
    return text.starts_with(plain_front);
}

void refuse_lock_that_does_not_fit(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    const Bytes front = raw_front(records_in(folder), page_bytes);
    const bool plain = begins_as_plain_records(front);
    if (keys == nullptr) {
        if (plain) return refuse_half_without_lock(disk, folder);
        if (looks_sealed(front)) throw lost_lock(folder);
        return;
    }
    if (opens_with(*keys, 1, front)) return;
    if (!plain && any_page_opens_with(*keys, records_in(folder))) return;
    throw misfit(disk, folder, keys, plain);
}

void refuse_lost_lock_of_library(FileSystem& disk, const Path& folder) {
    if (disk.exists(records_in(folder))) refuse_lock_that_does_not_fit(disk, folder, nullptr);
}

bool holds_half_of(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    return begins_as_plain_records(raw_front(records_in(folder), page_bytes)) &&
           holds_names_locked_with(disk, folder, keys);
}

bool opens_something(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    LockedFileSystem locked(disk, folder, keys);
    const std::vector<Path> top = disk.list(folder);
    return std::ranges::any_of(top, [&](const Path& at) { return opens_at(locked, folder, at); }) ||
           !sealed_past_lock(locked, folder).empty();
}

void refuse_lock_on_plain_library(FileSystem& disk, const Path& folder, const LockFile& lock) {
    if (!std::filesystem::exists(records_in(folder))) return;
    if (!begins_as_plain_records(raw_front(records_in(folder), page_bytes))) return;
    const bool of_this = lock.state == LockState::locked ? holds_locked_names(disk, folder)
                                                         : may_be_half_of(disk, folder, lock);
    if (!of_this) throw lock_without_a_locked_library(folder);
}

void refuse_records_of_other_keys(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    const Bytes front = raw_front(records_in(folder), page_bytes);
    if (!begins_as_plain_records(front)) return refuse_lock_that_does_not_fit(disk, folder, keys);
    if (noted_lock_mark(folder) == keys->mark() || opens_something(disk, folder, keys)) return;
    const auto sealed = first_locked_in_reach(disk, folder);
    if (!sealed || recorded_and_missing(disk, folder).empty()) {
        throw lock_without_a_locked_library(folder);  // what is locked is none of its files
    }
    throw lock_of_another_on_half(folder, *sealed);
}

}  // namespace quarterturn
