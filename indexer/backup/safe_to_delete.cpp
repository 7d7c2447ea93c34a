#include "indexer/backup/safe_to_delete.h"

#include <algorithm>
#include <array>

#include "indexer/backup/backups_at_hand.h"
#include "indexer/disk/checksum.h"
#include "indexer/disk/lies_in.h"
#include "indexer/disk/volume.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/photo_file.h"
#include "indexer/intake/stored_copies.h"
#include "indexer/intake/time_left.h"
#include "indexer/intake/walk.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr unsigned looking_threads = 2;

struct LookedAt {
    std::string sha256{};
    std::optional<Lacks> lacks{};
    std::vector<bool> whole_in{};  // of the backups, in their order
};

struct KnownBackup {
    std::set<PhotoId> photos;
    bool on_the_card = false;
    bool on_own_disk = false;
    std::optional<BackupSource> at_hand;
};

bool is_library(FileSystem& disk, const Path& folder) {
    return disk.exists(folder / records_file_name);
}

bool is_backup(FileSystem& disk, const Path& folder) {
    const bool lists = disk.exists(folder / manifest_name) || disk.exists(folder / lock_file_name);
    return lists && disk.exists(folder / read_me_name);
}

// What is kept there is not to be deleted, whatever else holds it too.
void refuse_kept_folder(FileSystem& disk, const Path& folder, const Path& asked) {
    const bool library = is_library(disk, folder);
    if (!library && !is_backup(disk, folder)) return;
    throw StoreError(folder.string() + " is a " + (library ? "library" : "backup") +
                     ": nothing in it is to be deleted. Name a card or folder other than " +
                     asked.string() + '.');
}

void refuse_kept_folders(FileSystem& disk, const Path& asked) {
    const Path whole = std::filesystem::weakly_canonical(asked);
    for (Path above = whole; above.has_relative_path(); above = above.parent_path()) {
        refuse_kept_folder(disk, above, asked);
    }
}

// Beside what is deleted, a backup is gone with it when the card is.
bool goes_with(const Path& card, const Path& backup, Library& library) {
    if (lies_in(backup, card)) return true;
    return on_one_volume(library.disk(), card, backup) &&
           !on_one_volume(library.disk(), card, library.folder());
}

class CardCheck {
  public:
    CardCheck(Library& library, const SafeWishes& wishes)
        : library_(library), wishes_(wishes), copies_(library), binned_(library.bin().checksums()) {
        for (const Path& source : wishes.sources) refuse_kept_folders(library.disk(), source);
        for (const Backup& backup : library.backups().all()) {
            const bool on_the_card = std::ranges::any_of(wishes.sources, [&](const Path& source) {
                return goes_with(source, backup.folder, library);
            });
            backups_.push_back({library.backups().photos_in(backup), on_the_card,
                                on_one_volume(library.disk(), backup.folder, library.folder()),
                                at_hand(library.disk(), backup)});
        }
    }

    SafeToDelete run() {
        const Found found = walk(library_, wishes_.sources);
        refuse_kept_on_the_way(found.files);
        look_at(found.files);
        for (const Path& file : found.left_alone) keep(file, Lacks::photo);
        for (const RefusedFile& refused : found.refused) keep(refused.file, Lacks::reading);
        return std::move(result_);
    }

  private:
    void keep(const Path& file, Lacks lacks) { result_.to_keep.push_back({file, lacks}); }

    // A drive may hold a library and a backup in folders of their own.
    void refuse_kept_on_the_way(const std::vector<FoundFile>& files) {
        std::set<Path> seen;
        for (const FoundFile& found : files) {
            for (Path above = found.file.parent_path();
                 above.has_relative_path() && seen.insert(above).second;
                 above = above.parent_path()) {
                refuse_kept_folder(library_.disk(), above, wishes_.sources.front());
            }
        }
    }

    void look_at(const std::vector<FoundFile>& files) {
        std::int64_t bytes = 0;
        for (const FoundFile& found : files) bytes += found.state.bytes;
        TimeLeft time(bytes);
        OrderedWork<LookedAt> work(
            files.size(), looking_threads, [&](std::size_t i) { return look(files[i].file); },
            wishes_.stop);
        std::size_t next = 0;
        while (auto looked = work.next()) {
            const FoundFile& found = files[next++];
            if (!looked->lacks) looked->lacks = backup_lacks(*looked);
            if (looked->lacks) {
                keep(found.file, *looked->lacks);
            } else {
                result_.safe.push_back(found.file);
            }
            time.done(found.state.bytes);
            if (wishes_.progress) {
                wishes_.progress(
                    {static_cast<std::int64_t>(next), std::ssize(files), found.file, time.left()});
            }
        }
        result_.stopped = next < files.size();
    }

    // From any thread: reads the file, and those of the library and the backups.
    LookedAt look(const Path& file) const try {
        if (!may_be_photo(library_.disk(), file)) return {{}, Lacks::photo};
        std::string sum = sha256_of_file(library_.disk(), file);
        if (!copies_.knows(sum)) return {{}, Lacks::library};
        if (binned_.contains(sum)) return {{}, Lacks::in_bin};
        const auto copy = copies_.whole_copy(sum);
        if (!copy || one_file(copy->file, file)) return {{}, Lacks::whole_file_in_library};
        LookedAt looked{std::move(sum), {}, {}};
        const std::array others{copy->file, file};
        for (const KnownBackup& backup : backups_) {
            looked.whole_in.push_back(
                backup.at_hand && !backup.on_the_card &&
                backup.at_hand->holds_apart_from(library_.disk(), others, looked.sha256));
        }
        return looked;
    } catch (const DiskError&) {
        return {{}, Lacks::reading};
    }

    // Nothing where one of the backups is enough.
    std::optional<Lacks> backup_lacks(const LookedAt& looked) {
        const auto photo = library_.photos().with_sha256(looked.sha256);
        Lacks lacks = Lacks::backup;
        for (std::size_t i = 0; photo && i < backups_.size(); ++i) {
            if (!backups_[i].photos.contains(*photo)) continue;
            const auto lacks_here = lacks_in(backups_[i], looked.whole_in[i]);
            if (!lacks_here) return std::nullopt;
            lacks = std::max(lacks, *lacks_here);
        }
        return lacks;
    }

    static std::optional<Lacks> lacks_in(const KnownBackup& backup, bool whole) {
        if (whole && !backup.on_own_disk) return std::nullopt;
        if (whole) return Lacks::backup_on_other_disk;
        if (backup.on_the_card) return Lacks::backup_on_card;
        return backup.at_hand ? Lacks::whole_file_in_backup : Lacks::backup_not_connected;
    }

    Library& library_;
    const SafeWishes& wishes_;
    const StoredCopies copies_;
    const std::set<std::string> binned_;
    std::vector<KnownBackup> backups_;
    SafeToDelete result_;
};

}  // namespace

std::string sentence(const FileToKeep& file) {
    const std::string name = file.file.string();
    switch (file.lacks) {
        case Lacks::library:
            return name + " is not in the library: bring it in.";
        case Lacks::whole_file_in_library:
            return name +
                   " is in the library, but its file there is gone or damaged: bring it in "
                   "again.";
        case Lacks::backup:
            return name + " is in the library, and in no backup yet: make a backup.";
        case Lacks::backup_not_connected:
            return name +
                   " is in a backup that is not connected: connect its drive, so that the "
                   "file there can be looked at.";
        case Lacks::whole_file_in_backup:
            return name +
                   " is in the library, but its file in the backup is gone or damaged: make "
                   "a backup that reads every file anew.";
        case Lacks::backup_on_card:
            return name + " is in a backup that lies on the same card: make one on another drive.";
        case Lacks::backup_on_other_disk:
            return name +
                   " is in the library, and the only connected backup that holds it whole lies on "
                   "the same disk, which may fail or be stolen: make one on another drive.";
        case Lacks::in_bin:
            return name +
                   " lies in the bin of the library and goes for good there: take it out of "
                   "the bin if you want to keep it.";
        case Lacks::photo:
            return name + " is no photo that the library keeps: keep it elsewhere if you need it.";
        case Lacks::reading:
            return name + " could not be read: see that the card sits firmly, and look again.";
    }
    return name;
}

SafeToDelete safe_to_delete(Library& library, const SafeWishes& wishes) {
    return CardCheck(library, wishes).run();
}

}  // namespace quarterturn
