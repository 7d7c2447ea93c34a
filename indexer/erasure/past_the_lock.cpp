#include "indexer/erasure/past_the_lock.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/erasure/recorded_checksums.h"
#include "indexer/erasure/stray_files.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/store/listed_past_lock.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {
namespace {

constexpr const char* nobody_can_tell =
    " is locked with this library's key, was moved there by hand, and is in no record, so nobody "
    "can tell here what it is of: leave it there. qturn lock remove unlocks it where it lies, and "
    "then you can look at it.";
constexpr const char* does_not_open =
    " is locked, and does not open with this library's key, so nobody can tell here what it is of: "
    "leave it there unless you know it.";
constexpr const char* lies_open =
    " lies past the lock and is in no record, so it may be of what is erased: look into it, and "
    "remove it if it is.";
constexpr const char* is_erased = " is erased, and was put there past the lock: remove it.";
constexpr const char* was_not_read =
    " could not be read, so it may be of what is erased: see to the disk and to its permissions, "
    "look into it, and remove it if it is.";
constexpr const char* was_not_listed =
    " could not be looked into, so something of what is erased may lie in it: see to the disk and "
    "to its permissions, and look yourself.";

std::string to_be_put_back(const std::vector<Path>& files) {
    const std::size_t others = files.size() - 1;
    return files.front().string() +
           (others == 0 ? " is a recorded file, and none of what is erased; it was moved there by "
                          "hand: leave it there, and qturn verify puts it back."
                        : " and " + std::to_string(others) +
                              " more are recorded files, and none of what is erased; they were "
                              "moved there by hand: leave them there, and qturn verify puts them "
                              "back.");
}

class PastTheLock {
  public:
    explicit PastTheLock(Library& library)
        : library_(library),
          locked_(dynamic_cast<LockedFileSystem&>(library.disk())),
          found_(files_past_lock(locked_, library.folder())) {}

    std::vector<std::string> copies(const std::set<std::string>& checksums) {
        std::vector<std::string> paths;
        for (const PastLock& file : found_.files) {
            if (is_of(file, checksums)) paths.push_back(listed(file));
        }
        for (const PastLock& file : open_at_top()) {
            if (is_of(file, checksums)) paths.push_back(file.lies.filename().string());
        }
        return paths;
    }

    std::vector<SaidOfFile> say_all(const std::set<std::string>& gone,
                                    const std::set<std::string>& going) {
        for (const PastLock& file : found_.files) {
            if (!going.contains(listed(file))) look_at(file, gone);
        }
        for (const DiskError& error : found_.out_of_reach) {
            said_.push_back({{}, error.file().string() + was_not_listed});
        }
        if (!moved_.empty()) said_.push_back({{}, to_be_put_back(moved_)});
        return std::move(said_);
    }

  private:
    std::string listed(const PastLock& file) const {
        return listed_past_lock(file.lies.lexically_relative(library_.folder()));
    }

    // Names stay there, so that the lock sees it, and takes it for one that is damaged.
    std::vector<PastLock> open_at_top() {
        std::vector<PastLock> files;
        for (const Path& entry : locked_.beneath().list(library_.folder())) {
            if (stays_as_it_is(entry.filename()) || !is_ordinary(entry)) continue;
            if (!looks_locked_within(entry)) files.push_back({entry, entry, false});
        }
        return files;
    }

    bool is_ordinary(const Path& lies) const try {
        return !std::filesystem::is_symlink(lies) && locked_.beneath().state(lies).regular;
    } catch (const DiskError&) {
        return false;
    }

    bool looks_locked_within(const Path& lies) const try {
        return begin_as_locked(locked_.beneath().read_front(lies, locked_size(0)));
    } catch (const DiskError&) {
        return false;
    }

    // Throws DiskError.
    std::string checksum_of(const PastLock& file) const {
        return file.sealed ? sha256(bytes_sealed(locked_, file.lies))
                           : sha256_of_file(locked_.beneath(), file.lies);
    }

    // What the program keeps of a photo is named by its checksum.
    static bool is_named_by(const PastLock& file, const std::set<std::string>& checksums) {
        constexpr std::size_t digits = 64;
        return is_named_by_checksum(file.lies) &&
               checksums.contains(file.lies.filename().string().substr(0, digits));
    }

    bool is_of(const PastLock& file, const std::set<std::string>& checksums) const try {
        if (!is_ordinary(file.lies)) return false;
        return is_named_by(file, checksums) || checksums.contains(checksum_of(file));
    } catch (const DiskError&) {
        return false;
    }

    void look_at(const PastLock& file, const std::set<std::string>& gone) try {
        if (!is_ordinary(file.lies)) return say(file, lies_open);
        const std::string checksum = checksum_of(file);
        if (const auto place = recorded_place(checksum)) return meet_recorded(file, *place);
        if (gone.contains(checksum) || is_named_by(file, gone)) return say(file, is_erased);
        say(file, file.sealed                      ? nobody_can_tell
                  : looks_locked_within(file.lies) ? does_not_open
                                                   : lies_open);
    } catch (const DiskError& error) {
        say(file, error.damaged() ? does_not_open : was_not_read);
    }

    std::optional<Path> recorded_place(const std::string& checksum) {
        if (!recorded_) recorded_ = recorded_by_checksum(library_);
        const auto found = recorded_->find(checksum);
        return found == recorded_->end() ? std::nullopt : std::optional(found->second);
    }

    // Where that one is in its place, this is a copy, and of what is not erased.
    void meet_recorded(const PastLock& file, const Path& place) {
        if (!library_.disk().exists(library_.folder() / place)) moved_.push_back(file.lies);
    }

    void say(const PastLock& file, const char* what) {
        said_.push_back({listed(file), file.lies.string() + what});
    }

    Library& library_;
    LockedFileSystem& locked_;
    FoundPastLock found_;
    std::optional<RecordedByChecksum> recorded_;
    std::vector<Path> moved_;
    std::vector<SaidOfFile> said_;
};

}  // namespace

FileSystem& disk_past_the_lock(Library& library) {
    return library.keys() ? dynamic_cast<LockedFileSystem&>(library.disk()).beneath()
                          : library.disk();
}

std::vector<std::string> copies_past_the_lock(Library& library, const ErasurePlan& plan) {
    if (!library.keys()) return {};
    return PastTheLock(library).copies(checksums_of_what_goes(library, plan));
}

std::vector<SaidOfFile> files_past_the_lock(Library& library, const std::vector<std::string>& gone,
                                            const std::set<std::string>& going) try {
    if (!library.keys()) return {};
    return PastTheLock(library).say_all({gone.begin(), gone.end()}, going);
} catch (const DiskError& error) {
    return {{{}, error.what()}};
}

}  // namespace quarterturn
