#include "indexer/backup/backup.h"

#include <algorithm>
#include <set>

#include "indexer/backup/backup_place.h"
#include "indexer/backup/clear_away.h"
#include "indexer/backup/erased_there.h"
#include "indexer/backup/known_records.h"
#include "indexer/backup/records_copy.h"
#include "indexer/backup/write_files.h"
#include "indexer/disk/volume.h"
#include "indexer/intake/move_lock.h"
#include "indexer/record/megabytes.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

class BackupRun {
  public:
    BackupRun(Library& library, const BackupWishes& wishes, BackupPlace place)
        : library_(library),
          wishes_(wishes),
          folder_(place.folder),
          listed_(std::move(place.listed)),
          first_(place.first) {
        report_.backup = std::move(place.backup);
        report_.backup.at = wishes.now;
    }

    BackupReport run() {
        wanted_ = recorded_files(library_);
        note_last_photo();
        for (LibraryFile& text : loose_texts(library_)) wanted_.push_back(std::move(text));
        plan_ = plan_backup(listed_, folder_.unfinished(), wanted_,
                            [this](const LibraryFile& file) { return is_there(file); });
        report_.stopped = wishes_.read_all && wishes_.stop.stop_requested();
        if (report_.stopped) return std::move(report_);
        new_.mark = listed_.mark;
        new_.last_erasure = last_finished_erasure(library_);
        const bool erased = listed_.last_erasure < new_.last_erasure;
        const std::vector<std::string> before = records_before();
        const bool records_new = erased || !records_are_there(before);
        if (plan_.nothing_new() && !records_new) return finish();
        choose_records(before, records_new, erased);
        refuse_without_room();
        settle_in();
        folder_.note_unfinished(paths_at_work());
        write_files();
        if (report_.stopped) return std::move(report_);
        if (records_new) write_records();
        note_records_kept();
        make_way();
        folder_.replace_manifest(new_);
        clear();
        return finish();
    }

  private:
    void note_last_photo() {
        for (const LibraryFile& file : wanted_) {
            if (file.photo) report_.backup.last_photo = *file.photo;
        }
    }

    // A link is gone with the file that it leads to; and what is written there is written here.
    static void refuse_own_file(const FileState& copy, const OwnFile& own, const Path& place) {
        if (!own.state || !copy.is_one_file_with(*own.state)) return;
        throw StoreError(place.string() +
                         " leads by a link to the library's own file, and is no copy of it: make "
                         "the backup in a new folder on another drive. Nothing was changed.");
    }

    // By its name and size, unless she wants all of them read, or it is all that is left.
    bool is_there(const LibraryFile& file) {
        if (lies_whole_there(file)) return true;
        if (listed_.lists(file.path, file.sha256)) report_.lost_there.insert(file.path);
        return false;
    }

    bool lies_whole_there(const LibraryFile& file) {
        FileSystem& disk = folder_.disk();
        const Path place = folder_.file(file.path);
        const auto state = state_if_there(disk, place);
        if (!state) return false;
        const OwnFile own = look_at_own(library_.disk(), library_.folder() / file.path);
        refuse_own_file(*state, own, place);
        if (own.gone) {
            const bool whole = holds_quietly(place, file);
            if (whole) report_.gone.push_back(library_.folder() / file.path);
            return whole;
        }
        if (!wishes_.read_all || wishes_.stop.stop_requested()) return has_size(*state, file);
        if (wishes_.progress) {
            wishes_.progress({++looked_at_, std::ssize(wanted_), place, std::nullopt});
        }
        return holds_quietly(place, file);
    }

    bool holds_quietly(const Path& place, const LibraryFile& file) try {
        return holds(folder_.disk(), place, file);
    } catch (const DiskError&) {
        return false;
    }

    // The copies of the records on the list, without those that are found damaged.
    std::vector<std::string> records_before() {
        std::vector<std::string> records = records_in(listed_);
        if (!wishes_.read_all) return records;
        std::erase_if(records, [&](const std::string& path) {
            const bool whole =
                holds(folder_.disk(), folder_.file(path), {{}, listed_.files.at(path)});
            if (whole) return false;
            plan_.obsolete.push_back(path);
            report_.lost_there.insert(path);
            return true;
        });
        return records;
    }

    bool records_are_there(const std::vector<std::string>& records) {
        if (records.empty() || records.size() < records_in(listed_).size() ||
            !folder_.disk().exists(folder_.file(records.back())))
            return false;
        return records_unchanged(library_, listed_.mark);
    }

    // Later than every copy there, even within a second, or when a clock was put back.
    void choose_records(const std::vector<std::string>& before, bool records_new, bool erased) {
        records_kept_ = before;
        if (!records_new) return;
        auto utc = wishes_.utc;
        if (!before.empty()) {
            utc = std::max(utc, time_of_records(before.back()).value() + std::chrono::seconds(1));
        }
        report_.backup.newest_records = records_path(utc);
        std::vector<std::string> all = erased ? std::vector<std::string>{} : before;
        all.push_back(report_.backup.newest_records);
        records_kept_ = records_to_keep(all);
        for (const std::string& path : before) {
            if (std::ranges::find(records_kept_, path) == records_kept_.end()) {
                plan_.obsolete.push_back(path);
            }
        }
    }

    void refuse_without_room() {
        const std::int64_t records =
            library_.disk().state(library_.folder() / records_file_name).bytes;
        const std::int64_t needed = plan_.bytes + 2 * records;
        const std::int64_t room = folder_.disk().free_bytes(folder_.folder());
        if (room >= needed) return;
        throw StoreError("There is not enough room in " + folder_.folder().string() + ": " +
                         megabytes(needed) + " are needed and " + megabytes(room) +
                         " are free. Free some, or choose another drive. Nothing was copied.");
    }

    void settle_in() {
        if (first_ && !library_.backups().marked(listed_.mark)) {
            report_.backup.last_erasure = new_.last_erasure;  // nothing of it came there
            Backup begun = report_.backup;
            begun.at.reset();
            library_.backups().add(begun);
        }
        library_.backups().begin(report_.backup);
        if (first_) folder_.replace_manifest(listed_);
        folder_.write_read_me();
    }

    std::vector<std::string> paths_at_work() const {
        std::vector<std::string> paths = plan_.obsolete;
        for (const PlannedFile& planned : plan_.to_write) {
            paths.push_back(planned.place);
            if (planned.place != planned.file.path) paths.push_back(planned.file.path);
        }
        paths.emplace_back(waiting_records);
        if (!listed_.files.contains(report_.backup.newest_records)) {
            paths.push_back(report_.backup.newest_records);
        }
        return paths;
    }

    void write_files() {
        const WrittenFiles written =
            write_missing(library_, folder_, plan_.to_write, {wishes_.progress, wishes_.stop});
        report_.copied = written.copied;
        report_.renamed = written.renamed;
        report_.problems = written.problems;
        report_.lacking = written.lacking_files;
        report_.stopped = written.stopped;
        for (const LibraryFile& file : plan_.there) new_.files[file.path] = file.sha256;
        for (std::size_t i = 0; i < plan_.to_write.size() && !report_.stopped; ++i) {
            note(plan_.to_write[i], written.lacking[i]);
        }
    }

    void note(const PlannedFile& planned, bool lacking) {
        if (!lacking) {
            new_.files[planned.place] = planned.file.sha256;
            return;
        }
        if (planned.file.photo) lacks_.push_back(*planned.file.photo);
        if (planned.place != planned.file.path) plan_.obsolete.push_back(planned.file.path);
    }

    void write_records() {
        const std::string& path = report_.backup.newest_records;
        new_.files[path] = write_records_copy(library_, folder_, path);
        report_.records = path;
    }

    void note_records_kept() {
        for (const std::string& path : records_kept_) {
            const auto before = listed_.files.find(path);
            if (before != listed_.files.end()) new_.files[path] = before->second;
        }
    }

    // Files whose name is taken by bytes of the backup before: until the list names them where they
    // wait, those must stay.
    void make_way() {
        if (!plan_.any_in_the_way()) return;
        folder_.replace_manifest(new_);
        for (const PlannedFile& planned : plan_.to_write) {
            if (planned.place == planned.file.path || !new_.files.contains(planned.place)) continue;
            put_in_place(folder_, planned);
            new_.files[planned.file.path] = planned.file.sha256;
        }
        for (const PlannedFile& planned : plan_.to_write) {
            if (planned.place == planned.file.path) continue;
            new_.files.erase(planned.place);
            plan_.obsolete.push_back(planned.place);
        }
    }

    void clear() {
        plan_.obsolete.emplace_back(waiting_records);
        plan_.obsolete.emplace_back(waiting_records + std::string("-journal"));
        std::erase_if(plan_.obsolete,
                      [&](const std::string& path) { return new_.files.contains(path); });
        ClearedAway cleared = clear_away(folder_, plan_.obsolete);
        count_removed(cleared.removed);
        report_.staying = std::move(cleared.staying);
    }

    // What lies there under another name now was not removed.
    void count_removed(const std::set<std::string>& removed) {
        const bool erased = report_.backup.last_erasure < new_.last_erasure;
        std::set<std::string> sums;
        for (const auto& [path, sha256] : new_.files) sums.insert(sha256);
        for (const std::string& path : removed) {
            if (is_records_path(path)) {
                report_.records_erased += erased ? 1 : 0;
            } else if (const auto before = listed_.files.find(path);
                       before != listed_.files.end()) {
                report_.removed += sums.contains(before->second) ? 0 : 1;
            } else if (!path.starts_with(moving_name) && !path.starts_with(waiting_records)) {
                ++report_.removed;  // it stayed before
            }
        }
    }

    BackupReport finish() {
        report_.on_same_disk = on_one_volume(library_.disk(), library_.folder(), folder_.folder());
        if (report_.staying.empty()) report_.backup.last_erasure = new_.last_erasure;
        std::int64_t photos = 0;
        for (const LibraryFile& file : wanted_) photos += file.photo ? 1 : 0;
        report_.backup.photos = photos - std::ssize(lacks_);
        library_.backups().finish(report_.backup, lacks_);
        remember_records(library_, listed_.mark);
        return std::move(report_);
    }

    Library& library_;
    const BackupWishes& wishes_;
    const BackupFolder folder_;
    const Manifest listed_;
    const bool first_;
    Manifest new_;
    std::vector<LibraryFile> wanted_;
    BackupPlan plan_;
    std::int64_t looked_at_ = 0;
    std::vector<std::string> records_kept_;
    std::vector<PhotoId> lacks_;
    BackupReport report_;
};

}  // namespace

BackupReport back_up(Library& library, const BackupWishes& wishes) {
    library.database().refuse_if_replaced();  // before anything is written elsewhere
    const MoveLock lock(library);
    if (!lock.held()) throw StoreError(photos_are_being_moved);
    return BackupRun(library, wishes, backup_place(library, wishes.to)).run();
}

}  // namespace quarterturn
