#pragma once
// What locking and unlocking one file have in common.

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/lock/locked_file_system.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {

bool is_at_top(const Path& folder, const Path& file);
bool is_locked(FileSystem& disk, const Path& file);  // by its first bytes

// Nothing where it is damaged. Throws DiskError.
std::optional<Bytes> sound_bytes(FileSystem& disk, const Path& file);
// The same of one that is locked, also where only its first bytes are wrong, which say that it is.
std::optional<Bytes> bytes_under_lock(LockedFileSystem& locked, const Path& file);

// Writes the file on one disk as it is on the other, and only then removes it here. What lies there
// already, and is not the same, is damaged.
void take_over(FileSystem& from, FileSystem& to, const Path& folder, const Path& file,
               const Bytes& bytes);

RefusedFile refused_by(const DiskError& error, std::string_view what_then);
void name_out_of_reach(const FilesInReach& found, std::string_view what_then, LockReport& report);

// One that may not be changed keeps no other from it. False where there is such a one.
template <class Convert>
bool convert_each(const std::vector<Path>& files, const LockWishes& wishes, LockReport& report,
                  std::string_view not_allowed_then, Convert convert) {
    bool all_allowed = true;
    for (const Path& file : files) {
        if (wishes.stop.stop_requested()) {
            report.stopped = true;
            return false;
        }
        std::optional<RefusedFile> problem;
        try {
            problem = convert(file);
        } catch (const DiskError& error) {
            if (!error.not_allowed()) throw;
            problem = refused_by(error, not_allowed_then);
            all_allowed = false;
        }
        problem ? report.problems.push_back(std::move(*problem)) : void(++report.files);
        if (wishes.progress) {
            wishes.progress(report.files + std::ssize(report.problems), std::ssize(files));
        }
    }
    return all_allowed;
}

}  // namespace quarterturn
