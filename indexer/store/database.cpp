#include "indexer/store/database.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include <utility>

#include "indexer/lock/locked_vfs.h"
#include "indexer/store/change_stamp.h"
#include "indexer/store/migrations/migrations.h"
#include "indexer/store/open_records.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_guard.h"
#include "indexer/store/records_unwritable.h"
#include "indexer/store/records_watch.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

StoreError emptied(const Path& file) {
    return StoreError(file.string() +
                      " is empty, and holds no records any longer: leave it as it is, and " +
                      restore_elsewhere + '.');
}

Path with_ending(const Path& file, const std::string& ending) {
    return Path(file.native() + ending);
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
    set_up(*handle);
    in_words(
        [&] {
            handle->exec("PRAGMA secure_delete = ON");
            handle->exec("PRAGMA synchronous = FULL");
        },
        handle->getHandle());
    carry_log_over(*handle);
    return handle;
}

void refuse_unless_changeable(SQLite::Database& handle, const Path& file) {
    if (sqlite3_db_readonly(handle.getHandle(), "main") == 0) return;
    throw RecordsUnwritable(file.string() +
                            " may not be changed: allow it in its permissions, or sign in as the "
                            "user it belongs to; or copy the library's folder to a place you can "
                            "write in and open it there.");
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
    try {
        disk.write_new(waiting, {});
        {
            const auto destination = open_file(waiting);
            SQLite::Backup(*destination, handle).executeStep();
        }
        disk.sync_file(waiting);
        disk.rename_over(waiting, copy);
    } catch (...) {
        remove_if_there(disk, waiting);  // it takes the room that may be wanting
        throw;
    }
    disk.sync_folder(copy.parent_path());
}

// SQLite would remove its log.
void refuse_if_empty(const Path& file, FileSystem& disk) {
    if (disk.state(file).bytes == 0) throw emptied(file);
}

std::unique_ptr<SQLite::Database> open_library_file(const Path& file, FileSystem& disk) {
    if (!disk.exists(file)) create(file, disk);
    refuse_unless_writable(file);
    refuse_if_empty(file, disk);
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

std::unique_ptr<SQLite::Database> opened(const Path& file, FileSystem& disk, Opening opening) {
    switch (opening) {
        case Opening::to_change:
            return open_library_file(file, disk);
        case Opening::to_look:
            return open_unchangeable(file, disk);
        case Opening::to_look_at_copy:
            return copy_to_look_at(file, disk);
    }
    return nullptr;
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
      opening_(opening),
      handle_(in_words([&] { return opened(file_, disk, opening); })),
      watch_(opening == Opening::to_change ? std::make_unique<RecordsWatch>(file_, *handle_)
                                           : nullptr) {
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

void Database::refuse_to_change() const {
    if (opening_ == Opening::to_look_at_copy) {
        throw NoRoomForRecords(no_room_sentence(file_.parent_path()));
    }
    const std::string reason = reason_against_writing(file_);
    throw RecordsUnwritable(reason.empty() ? file_.string() + " is open to be looked at alone."
                                           : reason);
}

void Database::try_out(const std::function<void()>& act) {
    auto before = std::exchange(handle_, in_words([&] { return copy_in_memory(*handle_); }));
    trying_out_ = true;
    const auto put_back = [&] {
        handle_ = std::move(before);
        trying_out_ = false;
    };
    try {
        act();
    } catch (...) {
        put_back();
        throw;
    }
    put_back();
}

void Database::refuse_if_replaced() {
    if (trying_out_) return;
    if (only_to_look()) refuse_to_change();
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
