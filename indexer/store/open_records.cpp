#include "indexer/store/open_records.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include "indexer/lock/locked_vfs.h"
#include "indexer/store/migrations/migrations.h"
#include "indexer/store/records_unwritable.h"
#include "indexer/store/records_uri.h"
#include "indexer/store/store_error.h"
#include "indexer/store/word_letters.h"

namespace quarterturn {
namespace {

bool any_log_beside(const Path& file, FileSystem& disk) {
    const Path log = file.native() + "-wal";
    return disk.exists(log) && disk.state(log).bytes > 0;
}

std::unique_ptr<SQLite::Database> opened_immutable(const Path& file) {
    const std::string vfs = vfs_of_records(file);
    auto handle = std::make_unique<SQLite::Database>(
        records_uri(file, vfs.empty() ? "immutable=1" : "immutable=1&vfs=" + vfs),
        SQLite::OPEN_READONLY | SQLite::OPEN_URI | SQLITE_OPEN_EXRESCODE);
    set_up(*handle);
    return handle;
}

// Whoever has them alone keeps the index of their log in memory.
std::unique_ptr<SQLite::Database> opened_alone(const Path& file) {
    auto handle = std::make_unique<SQLite::Database>(file.native(),
                                                     SQLite::OPEN_READWRITE | SQLITE_OPEN_EXRESCODE,
                                                     wait_for_others_ms, vfs_of_records(file));
    leave_log(*handle);
    set_up(*handle);
    handle->exec("PRAGMA locking_mode = EXCLUSIVE");
    return handle;
}

}  // namespace

void set_up(SQLite::Database& handle) {
    sqlite3_db_config(handle.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    handle.exec("PRAGMA trusted_schema = OFF");
    handle.exec("PRAGMA cell_size_check = ON");
    know_word_letters(handle);
}

void leave_log(SQLite::Database& handle) {
    sqlite3_db_config(handle.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    sqlite3_wal_autocheckpoint(handle.getHandle(), 0);
}

StoreError not_ours(const Path& file) {
    return StoreError(file.string() +
                      " is no library file of this program and was left as it is: name the folder "
                      "of a library.");
}

void refuse_unless_ours(SQLite::Database& handle, const Path& file) {
    if (handle.execAndGet("PRAGMA application_id").getInt() != application_id) throw not_ours(file);
}

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

// Without its log, which SQLite cannot read where it may write nothing.
std::unique_ptr<SQLite::Database> open_unchangeable(const Path& file, FileSystem& disk) {
    const auto refuse = [&](const char* why) {
        throw StoreError(file.string() + " lies where nothing can be written, and " + why +
                         ": copy the library's folder to a place you can write in, and open it "
                         "there. Nothing was changed.");
    };
    if (any_log_beside(file, disk)) refuse("what was last saved waits in a file beside it");
    auto handle = opened_immutable(file);
    refuse_unless_ours(*handle, file);
    if (needs_migration(*handle, file)) refuse("was written by an older version of this program");
    return handle;
}

std::unique_ptr<SQLite::Database> copy_to_look_at(const Path& file, FileSystem& disk) {
    const auto on_disk = any_log_beside(file, disk) ? opened_alone(file) : opened_immutable(file);
    refuse_unless_ours(*on_disk, file);
    if (needs_migration(*on_disk, file)) {
        throw NoRoomForRecords(no_room_sentence(file.parent_path()));
    }
    return copy_in_memory(*on_disk);
}

std::unique_ptr<SQLite::Database> copy_in_memory(SQLite::Database& records) {
    auto copy = std::make_unique<SQLite::Database>(
        ":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLITE_OPEN_EXRESCODE);
    set_up(*copy);
    SQLite::Backup(*copy, records).executeStep();
    copy->exec("PRAGMA foreign_keys = ON");
    return copy;
}

}  // namespace quarterturn
