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

bool is_link(const Path& file) {
    std::error_code unknown;
    return std::filesystem::is_symlink(file, unknown);
}

// Also a link that leads nowhere.
bool lies_there(FileSystem& disk, const Path& file) {
    return is_link(file) || disk.exists(file);
}

Path free_name_beside(FileSystem& disk, const Path& file) {
    Path beside;
    int number = 2;
    do {
        beside = file.parent_path() / file.stem();
        beside += " (" + std::to_string(number++) + ")";
        beside += file.extension();
    } while (lies_there(disk, beside));
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
            bytes = bytes_under_lock(locked_, file);
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
        std::optional<RefusedFile> aside = make_way_for_folders(file);
        if (!aside && !holds_just(file, *bytes)) aside = put_aside(file);
        take_over(locked_, plain_, folder_, file, *bytes);
        return aside;
    }

    bool any_stays() const { return any_stays_; }

  private:
    std::optional<RefusedFile> unlock_text(const Path& file, std::optional<Bytes> bytes) {
        if (!bytes && !is_locked(plain_, file)) return std::nullopt;  // it was unlocked before
        if (!bytes && wishes_.whole_copy) bytes = wishes_.whole_copy(file);
        if (!bytes) return stays_damaged(file);
        replace_file(plain_, file, *bytes);
        return std::nullopt;
    }

    RefusedFile stays_damaged(const Path& file) {
        any_stays_ = true;
        return {file, file.string() + " is damaged." + std::string(stays_locked)};
    }

    // As when it was brought in again, or put back from a backup, after the lock was taken off.
    bool was_put_back(const Path& file) const {
        const auto sum = recorded_.find(file.lexically_relative(folder_).generic_string());
        return sum != recorded_.end() && is_own_file(file) &&
               sha256_of_file(plain_, file) == sum->second;
    }

    // No link, through which another file is seen.
    bool is_own_file(const Path& file) const {
        const auto state = is_link(file) ? std::nullopt : state_if_there(plain_, file);
        return state && state->regular;
    }

    bool holds_just(const Path& file, const Bytes& bytes) const {
        return is_own_file(file) && sound_bytes(plain_, file) == bytes;
    }

    // What somebody put in its place while the library was locked.
    std::optional<RefusedFile> put_aside(const Path& file) const {
        if (!lies_there(plain_, file)) return std::nullopt;
        const Path beside = free_name_beside(plain_, file);
        plain_.rename_new(file, beside);
        plain_.sync_folder(file.parent_path());
        return RefusedFile{beside, beside.string() + " lay in the place of " +
                                       file.filename().string() +
                                       " while that was locked, and is something else: look at "
                                       "it."};
    }

    // The folder at the top, such as photos, may lie elsewhere by a link of hers.
    std::optional<RefusedFile> make_way_for_folders(const Path& file) const {
        Path within = folder_;
        const Path below = file.lexically_relative(folder_).parent_path();
        for (const Path& part : below) {
            within /= part;
            if (within.parent_path() == folder_) continue;
            if (lies_there(plain_, within) && (is_link(within) || !plain_.is_folder(within))) {
                return put_aside(within);
            }
        }
        return std::nullopt;
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
