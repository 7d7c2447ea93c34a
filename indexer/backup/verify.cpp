#include "indexer/backup/verify.h"

#include <algorithm>
#include <cerrno>
#include <functional>
#include <set>

#include "indexer/backup/heal.h"
#include "indexer/backup/left_by_lock.h"
#include "indexer/backup/moved_files.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/erasure/listed_files.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/time_left.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr unsigned reading_threads = 2;
constexpr std::ptrdiff_t kept_every = 200;  // files: little to be read twice, seldom written down

using Looked = std::optional<Trouble>;

Looked look_at(FileSystem& disk, const Path& path, const LibraryFile& file) try {
    if (!disk.exists(path)) return Trouble::missing;
    return holds(disk, path, file) ? Looked{} : Trouble::changed;
} catch (const DiskError&) {
    return Trouble::unreadable;
}

class Verifying {
  public:
    Verifying(Library& library, const VerifyWishes& wishes) : library_(library), wishes_(wishes) {}

    VerifyReport run() {
        lock_what_lies_open();
        clear_incoming();
        const std::vector<LibraryFile> all = recorded_files(library_);
        const std::vector<LibraryFile> files = still_to_read(all);
        report_.files_before = std::ssize(all) - std::ssize(files);
        read(files);
        if (report_.stopped) return std::move(report_);
        find_without_record();
        find_to_be_erased();
        find_past_lock();
        find_locked_backups();
        report_.records = record_problems(library_);
        std::ranges::move(records_of_others(library_), std::back_inserter(report_.records));
        if (std::string older = library_.older_records(); !older.empty()) {
            report_.records.push_back(std::move(older));
        }
        check_seals();
        remember([&](VerificationTable table) { table.finish(wishes_.now, problems()); });
        return std::move(report_);
    }

  private:
    // Photos in the order of their numbers, from where it was stopped; before them those that were
    // found to be wrong then.
    std::vector<LibraryFile> still_to_read(const std::vector<LibraryFile>& all) {
        const auto reached = library_.verification().reached();
        if (wishes_.from_start || !reached || !reached->last_photo) {
            remember([](VerificationTable table) { table.begin(); });
            return all;
        }
        const auto wrong = library_.verification().problems();
        std::vector<LibraryFile> first;
        std::vector<LibraryFile> rest;
        for (const LibraryFile& file : all) {
            if (!file.photo || *file.photo > reached->last_photo) {
                rest.push_back(file);
            } else if (std::ranges::binary_search(wrong, *file.photo)) {
                first.push_back(file);
            }
        }
        last_ = reached->last_photo;
        first.insert(first.end(), rest.begin(), rest.end());
        return first;
    }

    void read(const std::vector<LibraryFile>& files) {
        std::int64_t bytes = 0;
        for (const LibraryFile& file : files) bytes += std::max<std::int64_t>(file.bytes, 0);
        TimeLeft time(bytes);
        OrderedWork<Looked> work(
            files.size(), reading_threads,
            [&](std::size_t i) {
                return look_at(library_.disk(), library_.folder() / files[i].path, files[i]);
            },
            wishes_.stop);
        std::size_t next = 0;
        while (const auto looked = work.next()) {
            const LibraryFile& file = files[next++];
            if (*looked) meet(file);
            note(file);
            time.done(std::max<std::int64_t>(file.bytes, 0));
            tell({0, std::ssize(files), file.path, time.left()});
        }
        report_.stopped = next < files.size();
        keep();
    }

    // The file may have been moved meanwhile: what counts is where the record says it is now.
    void meet(LibraryFile file) {
        if (file.photo) {
            const auto photo = library_.photos().find_also_in_bin(*file.photo);
            if (!photo) return;
            file.path = photo->file.path;
        }
        const Looked looked = look_at(library_.disk(), library_.folder() / file.path, file);
        if (!looked) return;
        FileTrouble trouble{file.path, *looked};
        if (*looked == Trouble::missing) {
            trouble.moved_to = moved_.find(file).value_or("");
        } else if (needs_another_copy(file, *looked)) {
            trouble.copy_at = moved_.find_copy(file).value_or("");
        }
        may_mend() ? mend(file, trouble) : seek(file, trouble);
        if (!trouble.healed()) {
            wrong_.insert(file.sha256);
            if (file.photo) wrong_photos_.push_back(*file.photo);
        }
        report_.troubles.push_back(std::move(trouble));
    }

    // What was read counts all the same on a disk that takes nothing.
    void remember(const std::function<void(VerificationTable)>& how_far) try {
        if (remembers_) how_far(library_.verification());
    } catch (const NoRoomForRecords&) {
        remembers_ = false;
    }

    bool may_mend() const { return remembers_ && wishes_.heal; }

    // A full disk takes none of the others either.
    void mend(const LibraryFile& file, FileTrouble& trouble) try {
        if (!trouble.moved_to.empty()) {
            trouble.moved_back = moved_.put_back(trouble.moved_to, file);
        } else if (needs_another_copy(file, trouble.trouble)) {
            if (!trouble.copy_at.empty()) mend_by_copy(file, trouble);
            if (trouble.healed()) return;
            const Healed healed = heal(library_, file, sources());
            trouble.healed_from = healed.from;
            trouble.set_aside = healed.set_aside;
        }
    } catch (const DiskError& error) {
        if (error.disk_full()) throw;
        trouble.not_put_back = error.what();
    }

    void mend_by_copy(const LibraryFile& file, FileTrouble& trouble) {
        const Healed healed = heal_by_copy(library_, file, library_.folder() / trouble.copy_at);
        trouble.healed_by_copy = !healed.from.empty();
        trouble.set_aside = healed.set_aside;
    }

    void seek(const LibraryFile& file, FileTrouble& trouble) {
        const auto holding = std::ranges::find_if(
            sources(), [&](const BackupSource& source) { return source.lists(file); });
        if (holding != sources().end()) trouble.held_by = holding->folder().folder();
    }

    // What may only not be read by this user is there.
    bool needs_another_copy(const LibraryFile& file, Trouble trouble) {
        return trouble != Trouble::unreadable || disk_fails(file);
    }

    bool disk_fails(const LibraryFile& file) try {
        library_.disk().read_through(library_.folder() / file.path, [](auto) {});
        return false;
    } catch (const DiskError& error) {
        return error.error_number() == EIO;
    }

    const std::vector<BackupSource>& sources() {
        if (!sources_) sources_ = backups_at_hand(library_);
        return *sources_;
    }

    void note(const LibraryFile& file) {
        ++report_.files;
        if (file.photo) last_ = std::max(last_, *file.photo);
        if (report_.files % kept_every == 0) keep();
    }

    void keep() {
        remember([&](VerificationTable table) { table.reach(last_, wrong_photos_); });
    }

    void tell(ImportProgress progress) {
        progress.done = report_.files;
        if (wishes_.progress) wishes_.progress(progress);
    }

    // What an import that was interrupted had on its way.
    void clear_incoming() try {
        if (!may_mend()) return;
        const MoveLock lock(library_);
        if (lock.held()) quarterturn::clear_incoming(library_);
    } catch (const DiskError&) {
        return;  // the next check clears away, too
    }

    void lock_what_lies_open() {
        if (!library_.keys()) return;
        report_.lock = may_mend() ? lock_what_lies_open_in(library_, wishes_.stop)
                                  : what_lies_open_in(library_);
    }

    void find_without_record() {
        FilesWithoutRecord found = files_without_record(library_);
        for (std::string& path : found.out_of_reach) {
            if (!is_told_as_locked(path)) {
                report_.troubles.push_back({std::move(path), Trouble::unreadable});
            }
        }
        for (std::string& path : found.files) {
            if (!is_needed(path) && !is_told_as_locked(path)) {
                report_.without_record.push_back(std::move(path));
            }
        }
    }

    void find_to_be_erased() {
        report_.anything_erased = !ErasureTable(library_.database()).all().empty();
        report_.to_be_erased = words_of_still_listed(library_);
    }

    void find_past_lock() {
        for (const std::string& path : moved_past_lock(library_)) {
            if (!is_needed(path)) report_.lock.push_back(lies_past_lock(path));
        }
    }

    void find_locked_backups() {
        if (std::ranges::all_of(report_.troubles, &FileTrouble::healed)) return;
        std::ranges::move(words_of_locked_backups(library_), std::back_inserter(report_.lock));
    }

    bool is_told_as_locked(const std::string& path) {
        if (!is_still_locked(path)) return false;
        report_.lock.push_back(still_locked(library_, path));
        return true;
    }

    // It is told of with the file that it is, or may be healed by.
    bool is_needed(const std::string& path) const {
        return std::ranges::any_of(report_.troubles, [&](const FileTrouble& trouble) {
            return trouble.moved_to == path || (trouble.copy_at == path && !trouble.healed());
        });
    }

    void check_seals() {
        for (const Look& look : library_.looks().all()) {
            const auto sign_off = library_.sign_offs().standing(look.id);
            if (!sign_off) continue;
            for (const SealedPhoto& sealed : sign_off->seal.photos) check_seal(look, sealed);
        }
    }

    void check_seal(const Look& look, const SealedPhoto& sealed) {
        const bool recorded = library_.photos().with_sha256(sealed.sha256).has_value();
        if (recorded && !wrong_.contains(sealed.sha256)) return;
        report_.seals.push_back("The signed-off look " + look.name + " was sealed with " +
                                sealed.name +
                                (recorded ? ", whose file is gone or has changed."
                                          : ", which is not in the library any longer."));
    }

    std::int64_t problems() const {
        return std::ssize(report_.without_record) + std::ssize(report_.to_be_erased) +
               std::ssize(report_.lock) + std::ssize(report_.records) + std::ssize(report_.seals) +
               std::ranges::count_if(report_.troubles,
                                     [](const FileTrouble& one) { return !one.healed(); });
    }

    Library& library_;
    const VerifyWishes& wishes_;
    bool remembers_ = !library_.only_to_look();
    VerifyReport report_;
    std::optional<std::vector<BackupSource>> sources_;
    MovedFiles moved_{library_};
    PhotoId last_;
    std::vector<PhotoId> wrong_photos_;
    std::set<std::string> wrong_;  // checksums
};

}  // namespace

bool VerifyReport::whole() const {
    return !stopped && troubles.empty() && without_record.empty() && to_be_erased.empty() &&
           lock.empty() && records.empty() && seals.empty();
}

VerifyReport verify(Library& library, const VerifyWishes& wishes) {
    return Verifying(library, wishes).run();
}

}  // namespace quarterturn
