#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/store/lock_files.h"
#include "indexer/store/lock_folders.h"
#include "indexer/store/lock_one_file.h"
#include "indexer/store/recorded_and_missing.h"
#include "indexer/store/unlock_past_lock.h"

namespace quarterturn {
namespace {

// Of what the disk refuses alone.
constexpr std::string_view left_with_its_key =
    " What is locked of it stays, and its key is kept in lock.left.json: leave that there. qturn "
    "lock remove goes on with it then.";

Path free_name_beside(FileSystem& disk, const Path& file) {
    Path beside;
    int number = 2;
    do {
        beside = file.parent_path() / file.stem();
        beside += " (" + std::to_string(number++) + ")";
        beside += file.extension();
    } while (disk.exists(beside));
    return beside;
}

// Unlocks the files below a library's folder, one after the other.
class Unlocker {
  public:
    Unlocker(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes)
        : locked_(locked),
          plain_(locked.beneath()),
          folder_(folder),
          wishes_(wishes),
          recorded_(recorded_checksums(folder)) {}

    // One that is damaged, or that the disk does not give, stays locked, and so does its key.
    std::optional<RefusedFile> unlock(const Path& file) {
        std::optional<Bytes> bytes;
        try {
            bytes = sound_bytes(locked_, file);
        } catch (const DiskError& error) {
            any_stays_ = true;
            return refused_by(error, stays_locked);
        }
        if (is_at_top(folder_, file)) return unlock_text(file, bytes);
        if (!bytes && was_put_back(file)) {
            locked_.remove(file);
            return std::nullopt;
        }
        if (!bytes && wishes_.whole_copy) bytes = wishes_.whole_copy(file);
        if (!bytes) return stays_damaged(file);
        const std::optional<Path> aside = put_aside(file, *bytes);
        take_over(locked_, plain_, folder_, file, *bytes);
        return aside ? std::optional(was_put_aside(file, *aside)) : std::nullopt;
    }

    bool any_stays() const { return any_stays_; }

  private:
    std::optional<RefusedFile> unlock_text(const Path& file, const std::optional<Bytes>& bytes) {
        if (bytes) replace_file(plain_, file, *bytes);
        if (bytes || !is_locked(plain_, file)) return std::nullopt;  // it was unlocked before
        return stays_damaged(file);
    }

    RefusedFile stays_damaged(const Path& file) {
        any_stays_ = true;
        return {file, file.string() + " is damaged." + std::string(stays_locked)};
    }

    // As when it was brought in again, or put back from a backup, after the lock was taken off.
    bool was_put_back(const Path& file) const {
        const auto sum = recorded_.find(file.lexically_relative(folder_).generic_string());
        return sum != recorded_.end() && plain_.exists(file) &&
               sha256_of_file(plain_, file) == sum->second;
    }

    // What somebody put in its place while the library was locked.
    std::optional<Path> put_aside(const Path& file, const Bytes& bytes) const {
        const auto state = state_if_there(plain_, file);
        if (!state || !state->regular || sound_bytes(plain_, file) == bytes) return std::nullopt;
        const Path beside = free_name_beside(plain_, file);
        plain_.rename_new(file, beside);
        plain_.sync_folder(file.parent_path());
        return beside;
    }

    static RefusedFile was_put_aside(const Path& file, const Path& beside) {
        return {beside, beside.string() + " lay in the place of " + file.filename().string() +
                            " while that was locked, and holds something else: look at it."};
    }

    LockedFileSystem& locked_;
    FileSystem& plain_;
    const Path& folder_;
    const LockWishes& wishes_;
    const std::map<std::string, std::string> recorded_;
    bool any_stays_ = false;
};

}  // namespace

bool unlock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                  LockReport& report) {
    const bool all_past_lock = unlock_past_lock(locked, folder, report);
    const FilesInReach found = files_to_unlock(locked, folder);
    Unlocker unlocker(locked, folder, wishes);
    const bool all_allowed = convert_each(
        found.files, wishes, report, left_with_its_key,
        [&](const Path& file) { return unlocker.unlock(file); });
    if (report.stopped) return false;
    name_out_of_reach(found, stays_locked, report);
    const bool all_unlocked =
        all_past_lock && found.out_of_reach.empty() && !unlocker.any_stays() && all_allowed;
    return drop_locked_folders(locked, folder, report) && all_unlocked;
}

}  // namespace quarterturn
