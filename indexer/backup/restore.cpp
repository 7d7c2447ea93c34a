#include "indexer/backup/restore.h"

#include <algorithm>

#include "indexer/backup/backups_at_hand.h"
#include "indexer/backup/foreign_lock.h"
#include "indexer/backup/restored_before.h"
#include "indexer/backup/restored_records.h"
#include "indexer/backup/restoring_folder.h"
#include "indexer/disk/checksum.h"
#include "indexer/disk/lies_in.h"
#include "indexer/disk/volume.h"
#include "indexer/disk/write_once.h"
#include "indexer/intake/byte_budget.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/time_left.h"
#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr unsigned restoring_threads = 2;
constexpr std::int64_t restoring_memory = 200'000'000;

Manifest manifest_of(const BackupFolder& backup) {
    if (auto listed = backup.manifest()) return std::move(*listed);
    throw StoreError(backup.folder().string() + " is no backup (it holds no " + manifest_name +
                     "): name the folder that the backup was made in.");
}

// The new library has the lock of the backup. Null where that has none.
std::unique_ptr<LockedFileSystem> locked_as(const BackupFolder& backup, FileSystem& disk,
                                            const Path& to) {
    const KeysInHand keys = backup.keys();
    if (keys == nullptr) {
        key_ring::forget(to);
        return nullptr;
    }
    key_ring::add(to, keys);
    return std::make_unique<LockedFileSystem>(disk, to, keys);
}

class Restoring {
  public:
    Restoring(FileSystem& disk, const RestoreWishes& wishes)
        : beneath_(disk),
          wishes_(wishes),
          backup_(disk, std::filesystem::absolute(wishes.from).lexically_normal()),
          to_(std::filesystem::absolute(wishes.to).lexically_normal()),
          work_(to_ / restoring_folder_name),
          locked_(locked_as(backup_, disk, to_)),
          disk_(locked_ ? *locked_ : disk),
          listed_(manifest_of(backup_)),
          source_(backup_, listed_),
          budget_(restoring_memory) {}

    RestoreReport run() {
        refuse_unless_apart();
        report_.library = to_;
        report_.records = chosen_records(backup_, listed_, wishes_.records);
        refuse_unless_new();
        if (disk_.exists(to_ / records_file_name)) {  // all but the clearing away
            Library library = Library::open(to_, beneath_);
            copy(files_of(library));
        } else {
            begin();
            restore_files();
            if (report_.stopped) return std::move(report_);
            disk_.sync_file(work_ / records_file_name);
            disk_.rename_new(work_ / records_file_name, to_ / records_file_name);
            disk_.sync_folder(to_);
        }
        clear_away();
        return std::move(report_);
    }

  private:
    void refuse_unless_apart() {
        if (!lies_in(to_, backup_.folder()) && !lies_in(backup_.folder(), to_)) return;
        throw StoreError(to_.string() +
                         " and the backup lie one in the other: name a folder elsewhere.");
    }

    std::string of_this_backup() const {
        return "Being restored from a backup: go on with qturn restore, or remove this folder and "
               "all beside it.\n" +
               listed_.mark + '\n';
    }

    std::string of_what() const {
        return of_this_backup() + report_.records + '\n' + wishes_.client + '\n';
    }

    void refuse_unless_new() {
        refuse_lock_in_new_place(beneath_, to_, backup_.keys());
        if (entries_there().empty()) return;
        refuse_others_in(work_, beneath_, locked_.get());
        const Path words = work_ / of_what_name;
        if (!disk_.exists(words)) return refuse_unless_only_begun();
        const std::string before = text_of_file(disk_, words);
        if (before == of_what()) return;
        other_before_ =
            before.starts_with(of_this_backup()) && !disk_.exists(to_ / records_file_name);
        if (other_before_) return;
        throw StoreError(to_.string() +
                         " holds something else that is being restored, and was left as it is: "
                         "name a new folder.");
    }

    void refuse_unless_only_begun() {
        if (entries_there() == std::vector{work_} && !disk_.exists(work_ / records_file_name))
            return;
        throw is_not_empty(to_);
    }

    std::vector<Path> entries_there() {
        if (!disk_.exists(to_)) return {};
        std::vector<Path> entries = disk_.list(to_);
        std::erase(entries, to_ / lock_file_name);
        return entries;
    }

    void begin() {
        disk_.make_folders(work_);
        if (locked_) take_lock_along();
        if (!other_before_) note_of_what();
    }

    void note_of_what() {
        const std::string words = of_what();
        replace_file(disk_, work_ / of_what_name, std::as_bytes(std::span(words)));
    }

    void take_lock_along() {
        const Bytes lock = beneath_.read(backup_.file(lock_file_name), any_size);
        replace_file(beneath_, to_ / lock_file_name, lock);
    }

    // The records are closed when it ends, so that all of them are in their one file.
    void restore_files() {
        Library library = open_copy(backup_, listed_, report_.records, disk_, work_);
        if (!wishes_.client.empty()) {
            leave_client(library, wishes_.client, date_of(wishes_.now));
        }
        const auto files = files_of(library);
        if (other_before_) {
            drop_restored_before(disk_, to_, listed_, files);
            note_of_what();
        }
        refuse_without_room(files);
        copy(files);
        if (wishes_.client.empty() && !report_.stopped) remember_backup(library, files);
        settled_state(library);
    }

    // With her texts, which lie at the top of the backup; those of all clients, not of one.
    std::vector<LibraryFile> files_of(Library& library) const {
        std::vector<LibraryFile> files = recorded_files(library);
        for (const auto& [path, sha256] : listed_.files) {
            if (wishes_.client.empty() && !Path(path).has_parent_path()) {
                files.push_back({path, sha256});
            }
        }
        return files;
    }

    // The next backup to that folder goes on from here.
    void remember_backup(Library& library, const std::vector<LibraryFile>& files) {
        auto known = library.backups().marked(listed_.mark);
        if (!known) return;
        known->folder = backup_.folder();
        known->volume = volume_label(backup_.folder());
        known->newest_records = report_.records;
        known->at = wishes_.now;
        known->last_erasure = listed_.last_erasure;
        known->photos = -std::ssize(lacks_);
        for (const LibraryFile& file : files) {
            if (!file.photo) continue;
            known->last_photo = *file.photo;
            ++known->photos;
        }
        library.backups().begin(*known);
        library.backups().finish(*known, lacks_);
    }

    void refuse_without_room(const std::vector<LibraryFile>& files) {
        std::int64_t needed = 0;
        for (const LibraryFile& file : files) {
            const bool there = lies_there(disk_, to_ / file.path, file);
            needed += there ? 0 : std::max<std::int64_t>(file.bytes, 0);
        }
        if (disk_.free_bytes(to_) >= needed) return;
        throw StoreError("There is not enough room in " + to_.string() + ": " +
                         std::to_string(needed / 1'000'000 + 1) +
                         " MB are needed. Free some, or name a folder on another disk.");
    }

    void copy(const std::vector<LibraryFile>& files) {
        std::int64_t bytes = 0;
        for (const LibraryFile& file : files) bytes += std::max<std::int64_t>(file.bytes, 0);
        TimeLeft time(bytes);
        const KeptMemory kept;
        OrderedWork<bool> work(
            files.size(), restoring_threads, [&](std::size_t i) { return restore_one(files[i]); },
            wishes_.stop);
        std::size_t next = 0;
        while (const auto there = work.next()) {
            const LibraryFile& file = files[next++];
            note(file, *there);
            time.done(std::max<std::int64_t>(file.bytes, 0));
            if (wishes_.progress) {
                wishes_.progress(
                    {static_cast<std::int64_t>(next), std::ssize(files), file.path, time.left()});
            }
        }
        report_.stopped = next < files.size();
    }

    // False when the backup does not hold it whole.
    bool restore_one(const LibraryFile& file) {
        const Path to = to_ / file.path;
        if (holds(disk_, to, file)) return true;  // from before it was stopped
        const auto hold = budget_.hold(2 * std::max<std::int64_t>(file.bytes, 0));
        const auto bytes = source_.bytes_of(file);
        if (!bytes) return false;
        disk_.make_folders(to.parent_path());
        write_once(disk_, to, *bytes);
        return true;
    }

    void note(const LibraryFile& file, bool there) {
        if (there) {
            ++report_.files;
            return;
        }
        if (file.photo) lacks_.push_back(*file.photo);
        report_.problems.push_back(
            file.path +
            " could not be restored: the backup does not hold it whole. Bring it in again from its "
            "card or phone, or look for it in another backup with qturn verify.");
    }

    // What the folder is being restored from goes last, so that it can be gone on with until then.
    void clear_away() {
        for (const Path& entry : disk_.list(work_)) {
            if (entry.filename() == of_what_name) continue;
            if (disk_.state(entry).regular) {
                disk_.remove(entry);
                continue;
            }
            for (const Path& file : disk_.list(entry)) disk_.remove(file);
            disk_.remove_empty_folder(entry);
        }
        if (disk_.exists(work_ / of_what_name)) disk_.remove(work_ / of_what_name);
        drop_quietly();
    }

    // The library is whole: an empty folder that stays in it does no harm.
    void drop_quietly() try {
        disk_.remove_empty_folder(work_);
        disk_.sync_folder(to_);
    } catch (const DiskError&) {
        return;
    }

    FileSystem& beneath_;
    const RestoreWishes& wishes_;
    const BackupFolder backup_;
    const Path to_;
    const Path work_;
    const std::unique_ptr<LockedFileSystem> locked_;
    FileSystem& disk_;  // of the new library
    const Manifest listed_;
    const BackupSource source_;
    ByteBudget budget_;
    RestoreReport report_;
    bool other_before_ = false;  // of the same backup; that was never whole
    std::vector<PhotoId> lacks_;
};

}  // namespace

RestoreReport restore(FileSystem& disk, const RestoreWishes& wishes) {
    return Restoring(disk, wishes).run();
}

std::vector<std::string> times_of_records(FileSystem& disk, const Path& backup) {
    std::vector<std::string> times;
    for (const std::string& path : records_in(manifest_of(BackupFolder(disk, backup)))) {
        times.push_back(records_time(path));
    }
    return times;
}

}  // namespace quarterturn
