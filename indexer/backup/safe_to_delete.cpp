#include "indexer/backup/safe_to_delete.h"

#include "indexer/backup/backups_at_hand.h"
#include "indexer/disk/checksum.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/photo_file.h"
#include "indexer/intake/stored_copies.h"
#include "indexer/intake/time_left.h"
#include "indexer/intake/walk.h"

namespace quarterturn {
namespace {

constexpr unsigned looking_threads = 2;

struct LookedAt {
    std::string sha256{};
    std::optional<Lacks> lacks{};
};

struct KnownBackup {
    std::set<PhotoId> photos;
    std::optional<BackupSource> at_hand;
};

class CardCheck {
  public:
    CardCheck(Library& library, const SafeWishes& wishes)
        : library_(library), wishes_(wishes), copies_(library) {
        for (const Backup& backup : library.backups().all()) {
            backups_.push_back({library.backups().photos_in(backup), at_hand(library, backup)});
        }
    }

    SafeToDelete run() {
        const Found found = walk(library_, wishes_.sources);
        look_at(found.files);
        for (const Path& file : found.left_alone) keep(file, Lacks::photo);
        for (const RefusedFile& refused : found.refused) keep(refused.file, Lacks::reading);
        return std::move(result_);
    }

  private:
    void keep(const Path& file, Lacks lacks) { result_.to_keep.push_back({file, lacks}); }

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
            if (!looked->lacks) looked->lacks = backup_lacks(looked->sha256);
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

    // From any thread: reads the file, and the library's own.
    LookedAt look(const Path& file) const try {
        if (!may_be_photo(library_.disk(), file)) return {{}, Lacks::photo};
        std::string sum = sha256_of_file(library_.disk(), file);
        if (!copies_.knows(sum)) return {{}, Lacks::library};
        const auto copy = copies_.whole_copy(sum);
        if (!copy || one_file(copy->file, file)) return {{}, Lacks::whole_file_in_library};
        return {std::move(sum), {}};
    } catch (const DiskError&) {
        return {{}, Lacks::reading};
    }

    std::optional<Lacks> backup_lacks(const std::string& sum) {
        const auto photo = library_.photos().with_sha256(sum);
        const bool backed_up =
            photo && std::ranges::any_of(backups_, [&](const KnownBackup& backup) {
                return backup.photos.contains(*photo) &&
                       (!backup.at_hand || backup.at_hand->lists({{}, sum}));
            });
        return backed_up ? std::optional<Lacks>() : Lacks::backup;
    }

    Library& library_;
    const SafeWishes& wishes_;
    const StoredCopies copies_;
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
