#include "indexer/store/rewritten_records.h"

#include <sqlite3.h>

#include "indexer/lock/locked_page.h"
#include "indexer/lock/locked_vfs.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/records_uri.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

constexpr int wait_to_be_alone_ms = 1000;

constexpr std::int64_t front_bytes_of_records = 16;

std::string vfs_for(RecordsForm form) {
    return form == RecordsForm::locked ? locked_vfs() : sqlite3_vfs_find(nullptr)->zName;
}

SQLite::Database opened(const Path& file, RecordsForm form) {
    return {file.native(), SQLite::OPEN_READWRITE | SQLITE_OPEN_EXRESCODE | SQLite::OPEN_URI,
            wait_to_be_alone_ms, vfs_for(form)};
}

// By its first bytes. Not while this process has it open: whoever closes a file lets go of all
// locks that the process has on it.
RecordsForm form_of(FileSystem& disk, const Path& records) {
    const Bytes front = disk.read_front(records, front_bytes_of_records);
    return begins_as_plain_records(front) ? RecordsForm::plain : RecordsForm::locked;
}

// While the connection is open nobody else can read the file.
void hold_alone(SQLite::Database& records) try {
    records.exec("PRAGMA locking_mode = EXCLUSIVE");
    records.exec("BEGIN EXCLUSIVE");
    records.exec("COMMIT");
} catch (const SQLite::Exception& error) {
    if (error.getErrorCode() != SQLITE_BUSY) throw;
    throw StoreError(
        "Another window or command has this library open: close it, and try again. Nothing was "
        "changed.");
}

void leave_room_for_seals(SQLite::Database& records) {
    int reserved = reserved_bytes;
    sqlite3_file_control(records.getHandle(), "main", SQLITE_FCNTL_RESERVE_BYTES, &reserved);
}

void write_anew(SQLite::Database& records, const Path& to, RecordsForm form) {
    if (form == RecordsForm::locked) leave_room_for_seals(records);
    SQLite::Statement vacuum(records, "VACUUM INTO ?");
    vacuum.bind(1, records_uri(to, "vfs=" + vfs_for(form)));
    vacuum.exec();
}

void refuse_unless_sound(SQLite::Database& records) {
    if (records.execAndGet("PRAGMA integrity_check").getString() == "ok") return;
    throw StoreError(
        "The records did not come out whole: run qturn verify, and try again. They are as they "
        "were.");
}

void rewrite(FileSystem& disk, const Path& records, RecordsForm form) {
    const Path waiting(records.native() + ".rewritten");
    SQLite::Database before = opened(records, form_of(disk, records));
    hold_alone(before);
    // What stands in the log would lie beside the new file.
    before.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
    disk.write_new(waiting, {});  // with the mode of all files of hers
    write_anew(before, waiting, form);
    {
        SQLite::Database after = opened(waiting, form);
        refuse_unless_sound(after);
        after.execAndGet("PRAGMA journal_mode = WAL");
    }
    disk.sync_file(waiting);
    disk.rename_over(waiting, records);
    disk.sync_folder(records.parent_path());
}

}  // namespace

void refuse_unless_alone_with(FileSystem& disk, const Path& records) {
    in_words([&] {
        SQLite::Database opened_records = opened(records, form_of(disk, records));
        hold_alone(opened_records);
    });
}

void change_alone(FileSystem& disk, const Path& records,
                  const std::function<void(SQLite::Database&)>& change) {
    in_words([&] {
        SQLite::Database opened_records = opened(records, form_of(disk, records));
        hold_alone(opened_records);
        change(opened_records);
        opened_records.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
    });
}

void rewrite_records(FileSystem& disk, const Path& records, RecordsForm form) {
    if (form_of(disk, records) == form) return;
    in_words([&] { rewrite(disk, records, form); });
    const Path journal(records.native() + "-journal");
    if (disk.exists(journal)) disk.remove(journal);
}

}  // namespace quarterturn
