#include "indexer/backup/write_files.h"

#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/intake/byte_budget.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/set_aside.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/time_left.h"

namespace quarterturn {
namespace {

constexpr unsigned writing_threads = 2;
constexpr std::int64_t bytes_in_memory = 200'000'000;
std::int64_t known_bytes(const PlannedFile& planned) {
    return std::max<std::int64_t>(planned.file.bytes, 0);
}

struct Written {
    bool renamed = false;
    std::string problem{};  // empty: it is there
};

class Writer {
  public:
    Writer(Library& library, const BackupFolder& backup)
        : library_(library), disk_(backup.disk()), backup_(backup), budget_(bytes_in_memory) {}

    // Safe to use from several threads, each for another file. One that may not be written keeps no
    // other.
    Written write(const PlannedFile& planned) try {
        const Path to = backup_.file(planned.place);
        disk_.make_folders(to.parent_path());
        if (holds(disk_, to, planned.file)) return {};  // left by a backup that did not end
        if (disk_.is_folder(to)) return {.problem = to.string() + " is a folder" + in_the_way};
        if (lies_there_already(planned)) {
            make_room(planned, to);
            if (link(planned, to)) return {.renamed = true};
        }
        return copy(planned, to);
    } catch (const DiskError& error) {
        if (!error.not_allowed()) throw;
        return {.problem = error.what()};
    }

  private:
    // Bytes that the list of files still needs do not lie there, else the place were in moving/.
    void make_room(const PlannedFile& planned, const Path& to) {
        if (!disk_.exists(to)) return;
        if (planned.ours) {
            disk_.remove(to);
        } else {
            set_aside(disk_, to);
        }
    }

    bool lies_there_already(const PlannedFile& planned) try {
        return !planned.same_bytes.empty() &&
               holds(disk_, backup_.file(planned.same_bytes), planned.file);
    } catch (const DiskError&) {
        return false;
    }

    // Disks without second names get a copy.
    bool link(const PlannedFile& planned, const Path& to) try {
        disk_.link_new(backup_.file(planned.same_bytes), to);
        disk_.sync_folder(to.parent_path());
        return true;
    } catch (const DiskError& error) {
        if (disk_.exists(to)) throw;
        return false;
    }

    Written copy(const PlannedFile& planned, const Path& to) {
        const auto hold = budget_.hold(2 * known_bytes(planned));
        const Path from = library_.folder() / planned.file.path;
        Bytes bytes;
        try {
            if (!disk_.exists(from)) return {.problem = from.string() + " is not there: " + mend};
            bytes = disk_.read(from, any_size);
        } catch (const DiskError& error) {
            return {.problem = error.what()};
        }
        if (sha256(bytes) != planned.file.sha256) {
            return {.problem = from.string() +
                               " is no longer what was brought in, and was not copied: " + mend};
        }
        make_room(planned, to);  // only now: what lies there may be all that is left of it
        write_once(disk_, to, bytes);
        return {};
    }

    static constexpr const char* in_the_way =
        " where a photo or paper belongs: look what is in it, move it out of the backup, and make "
        "the backup again.";
    static constexpr const char* mend =
        "qturn verify looks for it in other backups; else bring it in again from its card or "
        "phone.";

    Library& library_;
    FileSystem& disk_;
    const BackupFolder& backup_;
    ByteBudget budget_;
};

}  // namespace

WrittenFiles write_missing(Library& library, const BackupFolder& backup,
                           const std::vector<PlannedFile>& files, const HowToWrite& how) {
    Writer writer(library, backup);
    std::int64_t bytes = 0;
    for (const PlannedFile& planned : files) bytes += known_bytes(planned);
    TimeLeft time(bytes);
    WrittenFiles written;
    const KeptMemory kept;
    OrderedWork<Written> work(
        files.size(), writing_threads, [&](std::size_t i) { return writer.write(files[i]); },
        how.stop);
    while (const auto one = work.next()) {
        const PlannedFile& planned = files[written.lacking.size()];
        const bool lacking = !one->problem.empty();
        written.lacking.push_back(lacking);
        if (lacking) {
            written.problems.push_back(one->problem);
            written.lacking_files.push_back(library.folder() / planned.file.path);
        }
        (one->renamed ? written.renamed : written.copied) += lacking ? 0 : 1;
        time.done(known_bytes(planned));
        if (how.progress) {
            how.progress(
                {std::ssize(written.lacking), std::ssize(files), planned.file.path, time.left()});
        }
    }
    written.stopped = written.lacking.size() < files.size();
    return written;
}

void put_in_place(const BackupFolder& backup, const PlannedFile& planned) {
    FileSystem& disk = backup.disk();
    const Path waiting = backup.file(planned.place);
    const Path to = backup.file(planned.file.path);
    disk.make_folders(to.parent_path());
    if (disk.exists(to)) disk.remove(to);
    try {
        disk.link_new(waiting, to);
    } catch (const DiskError&) {
        write_once(disk, to, disk.read(waiting, any_size));
    }
    disk.sync_folder(to.parent_path());
}

}  // namespace quarterturn
