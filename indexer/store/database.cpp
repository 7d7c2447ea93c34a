#include "indexer/store/database.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include "indexer/lock/locked_vfs.h"
#include "indexer/store/change_stamp.h"
#include "indexer/store/migrations/migrations.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_guard.h"
#include "indexer/store/records_unwritable.h"
#include "indexer/store/records_uri.h"
#include "indexer/store/records_watch.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

constexpr int application_id = 0x5174726E;  // "Qtrn"
constexpr int wait_for_others_ms = 5000;

Path with_ending(const Path& file, const std::string& ending) {
    return Path(file.native() + ending);
}

void trust_nothing(SQLite::Database& handle) {
    sqlite3_db_config(handle.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    handle.exec("PRAGMA trusted_schema = OFF");
    handle.exec("PRAGMA cell_size_check = ON");
}

// The log stays as it is when the records are closed.
void leave_log(SQLite::Database& handle) {
    sqlite3_db_config(handle.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    sqlite3_wal_autocheckpoint(handle.getHandle(), 0);
}

void carry_log_over(SQLite::Database& handle) {
    constexpr int usual_pages = 1000;  // SQLITE_DEFAULT_WAL_AUTOCHECKPOINT
    sqlite3_db_config(handle.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
    sqlite3_wal_autocheckpoint(handle.getHandle(), usual_pages);
}

// SQLite removes a log beside records that it cannot read: so it is left alone until it has read
// them, as setting "synchronous" does.
std::unique_ptr<SQLite::Database> open_file(const Path& file) {
    // An absolute path, since SQLite takes ":memory:" and the like for something else.
    auto handle = std::make_unique<SQLite::Database>(std::filesystem::absolute(file).native(),
                                                     SQLite::OPEN_READWRITE | SQLITE_OPEN_EXRESCODE,
                                                     wait_for_others_ms, vfs_of_records(file));
    leave_log(*handle);
    trust_nothing(*handle);
    handle->exec("PRAGMA secure_delete = ON");
    handle->exec("PRAGMA synchronous = FULL");
    carry_log_over(*handle);
    return handle;
}

StoreError not_ours(const Path& file) {
    return StoreError(file.string() +
                      " is no library file of this program and was left as it is: name the folder "
                      "of a library.");
}

void refuse_unless_ours(SQLite::Database& handle, const Path& file) {
    if (handle.execAndGet("PRAGMA application_id").getInt() != application_id) throw not_ours(file);
}

void refuse_unless_changeable(SQLite::Database& handle, const Path& file) {
    if (sqlite3_db_readonly(handle.getHandle(), "main") == 0) return;
    throw RecordsUnwritable(file.string() +
                            " may not be changed: allow it in its permissions, or sign in as the "
                            "user it belongs to; or copy the library's folder to a place you can "
                            "write in and open it there.");
}

// True when the file is older than this program.
bool needs_migration(SQLite::Database& handle, const Path& file) {
    const int version = schema_version(handle);
    const int newest = static_cast<int>(all_migrations().size());
    if (version > newest) {
        throw StoreError(file.string() +
                         " was written by a newer version of this program (its "
                         "records are of version " +
                         std::to_string(version) + ", this one knows them up to " +
                         std::to_string(newest) +
                         "): install the newest version. Nothing was changed.");
    }
    return version < newest;
}

void remove_if_there(FileSystem& disk, const Path& file) {
    for (const char* ending : {"", "-journal", "-wal", "-shm"}) {
        if (const Path part = with_ending(file, ending); disk.exists(part)) disk.remove(part);
    }
}

// The file gets its name when it is whole, so that a library is there or is not.
void create(const Path& file, FileSystem& disk) {
    const Path waiting = with_ending(file, ".new");
    remove_if_there(disk, waiting);
    disk.write_new(waiting, {});
    {
        const auto handle = open_file(waiting);
        handle->exec("PRAGMA application_id = " + std::to_string(application_id));
        migrate(*handle, all_migrations());
        handle->exec("PRAGMA journal_mode = WAL");
    }
    disk.sync_file(waiting);
    disk.rename_new(waiting, file);
    disk.sync_folder(file.parent_path());
}

void keep_copy(SQLite::Database& handle, const Path& file, FileSystem& disk) {
    const Path copy =
        with_ending(file, ".version-" + std::to_string(schema_version(handle)) + ".copy");
    const Path waiting = with_ending(copy, ".new");
    remove_if_there(disk, waiting);
    disk.write_new(waiting, {});
    {
        const auto destination = open_file(waiting);
        SQLite::Backup(*destination, handle).executeStep();
    }
    disk.sync_file(waiting);
    disk.rename_over(waiting, copy);
    disk.sync_folder(copy.parent_path());
}

std::unique_ptr<SQLite::Database> open_library_file(const Path& file, FileSystem& disk) {
    if (!disk.exists(file)) create(file, disk);
    refuse_unless_writable(file);
    if (disk.state(file).bytes == 0) throw not_ours(file);  // SQLite would remove its log
    auto handle = open_file(file);
    refuse_unless_ours(*handle, file);
    refuse_unless_changeable(*handle, file);
    if (needs_migration(*handle, file)) {
        keep_copy(*handle, file, disk);
        migrate(*handle, all_migrations());
    }
    handle->exec("PRAGMA journal_mode = WAL");
    handle->exec("PRAGMA foreign_keys = ON");
    return handle;
}

// Without its log, which SQLite cannot read where it may write nothing.
std::unique_ptr<SQLite::Database> open_unchangeable(const Path& file) {
    const std::string vfs = vfs_of_records(file);
    auto handle = std::make_unique<SQLite::Database>(
        records_uri(file, vfs.empty() ? "immutable=1" : "immutable=1&vfs=" + vfs),
        SQLite::OPEN_READONLY | SQLite::OPEN_URI | SQLITE_OPEN_EXRESCODE);
    trust_nothing(*handle);
    return handle;
}

std::unique_ptr<SQLite::Database> open_to_look(const Path& file, FileSystem& disk) {
    const auto refuse = [&](const char* why) {
        throw StoreError(file.string() + " lies where nothing can be written, and " + why +
                         ": copy the library's folder to a place you can write in, and open it "
                         "there. Nothing was changed.");
    };
    const Path log = with_ending(file, "-wal");
    if (disk.exists(log) && disk.state(log).bytes > 0) {
        refuse("what was last saved waits in a file beside it");
    }
    auto handle = open_unchangeable(file);
    refuse_unless_ours(*handle, file);
    if (needs_migration(*handle, file)) refuse("was written by an older version of this program");
    return handle;
}

void keep_what_is_open(SQLite::Database& handle, const Path& folder, FileSystem& disk) {
    const Path place = free_place_for_records(folder);
    disk.write_new(place, {});  // with the mode of all files of hers
    try {
        in_words([&] {
            SQLite::Statement keep(handle, "VACUUM INTO ?");
            keep.bind(1, place.native());
            keep.exec();
        });
    } catch (const StoreError&) {
        disk.remove(place);
        throw;
    }
}

}  // namespace

Database::Database(const Path& file, FileSystem& disk, Opening opening)
    : file_(std::filesystem::absolute(file)),
      disk_(&disk),
      handle_(in_words([&] {
          return opening == Opening::to_look ? open_to_look(file_, disk)
                                             : open_library_file(file_, disk);
      })),
      watch_(opening == Opening::to_look ? nullptr
                                         : std::make_unique<RecordsWatch>(file_, *handle_)) {
    if (file_.filename() == records_file_name) known_.emplace(file_, *handle_, disk);
}

Database::Database(Database&&) noexcept = default;

// Whoever closes the records last carries over what stands in their log.
Database::~Database() {
    if (!handle_ || only_to_look()) return;
    try {
        refuse_if_replaced();
    } catch (const std::exception&) {
        // It was said before, or is said when the library is opened the next time.
        if (!kept_) leave_log(*handle_);
        return;
    }
    try {
        if (known_) known_->note(*handle_, *disk_);
    } catch (const std::exception&) {
        // It is only a precaution.
    }
}

int Database::schema_version() {
    return in_words([&] { return quarterturn::schema_version(*handle_); });
}

void Database::look_again() {
    if (!watch_) return;
    try {
        watch_->look();
    } catch (const std::exception&) {
        return;  // the next look tells
    }
}

void Database::refuse_if_replaced() {
    if (only_to_look()) {
        const std::string reason = reason_against_writing(file_);
        throw RecordsUnwritable(reason.empty() ? file_.string() + " is open to be looked at alone."
                                               : reason);
    }
    switch (watch_->look()) {
        case RecordsWatch::Found::as_left:
            return;
        case RecordsWatch::Found::replaced:
            return refuse_replaced();
        case RecordsWatch::Found::overwritten:
            return refuse_overwritten();
    }
}

// SQLite takes no copy within a change; the next look does, or closing.
void Database::refuse_replaced() {
    const bool within_change = sqlite3_get_autocommit(handle_->getHandle()) == 0;
    if (!kept_ && !within_change) {
        keep_what_is_open(*handle_, file_.parent_path(), *disk_);
        kept_ = true;
    }
    throw StoreError(file_.string() +
                     " was replaced by another file while the library was open, as services do "
                     "that copy folders. Nothing was changed; what was saved here before is kept "
                     "beside it, in a file whose name begins with records.sqlite.kept. Close every "
                     "window of the program, and open the library again. Keep it in a folder that "
                     "no such service copies.");
}

// Nothing of the log may come into that file, now or when it is closed.
void Database::refuse_overwritten() {
    leave_log(*handle_);
    if (!kept_) {
        keep_overwritten(file_, *disk_);
        kept_ = true;
    }
    throw StoreError(overwritten_sentence(file_));
}

ChangeStamp change_stamp(Database& database) {
    return {database.version_of_others(), sqlite3_total_changes64(database.handle().getHandle())};
}

std::int64_t Database::version_of_others() {
    return in_words([&] { return handle_->execAndGet("PRAGMA data_version").getInt64(); });
}

}  // namespace quarterturn
