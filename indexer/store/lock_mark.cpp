#include "indexer/store/lock_mark.h"

#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_in_memory.h"
#include "indexer/store/records_watch.h"
#include "indexer/store/rewritten_records.h"

namespace quarterturn {
namespace {

constexpr const char* lock_mark_setting = "lock";
constexpr const char* taken_off_setting = "lock taken off";
constexpr std::int64_t front_that_tells_form = 16;

bool are_plain(const Path& records) {
    return begins_as_plain_records(raw_front(records, front_that_tells_form));
}

std::optional<std::string> mark_in(SQLite::Database& records) {
    SQLite::Statement found(records, "SELECT value FROM setting WHERE name = ?");
    found.bind(1, lock_mark_setting);
    return found.executeStep() ? std::optional(found.getColumn(0).getString()) : std::nullopt;
}

void put(SQLite::Database& records, const char* name, const std::string& value) {
    SQLite::Statement set(records, "INSERT OR REPLACE INTO setting (name, value) VALUES (?, ?)");
    set.bind(1, name);
    set.bind(2, value);
    set.exec();
}

void set_mark(SQLite::Database& records, const std::string& mark) {
    if (mark_in(records) != mark) put(records, lock_mark_setting, mark);
}

void clear_mark(SQLite::Database& records) {
    SQLite::Statement clear(records, "DELETE FROM setting WHERE name = ?");
    clear.bind(1, lock_mark_setting);
    clear.exec();
    put(records, taken_off_setting, "yes");
}

}  // namespace

std::optional<std::string> noted_lock_mark(const Path& folder) try {
    const Path records = folder / records_file_name;
    if (!are_plain(records)) return std::nullopt;
    return mark_in(RecordsInMemory(records).handle());
} catch (const SQLite::Exception&) {
    return std::nullopt;
} catch (const StoreError&) {
    return std::nullopt;
}

void note_lock_mark(FileSystem& disk, const Path& folder, const LibraryKeys& keys) {
    if (noted_lock_mark(folder) == keys.mark()) return;
    change_alone(disk, folder / records_file_name,
                 [&](SQLite::Database& records) { set_mark(records, keys.mark()); });
}

void forget_lock_mark(FileSystem& disk, const Path& folder) try {
    if (!noted_lock_mark(folder)) return;
    change_alone(disk, folder / records_file_name, clear_mark);
} catch (const StoreError&) {
    return;
} catch (const DiskError&) {
    return;
}

bool has_had_lock(Library& library) {
    SettingsTable settings = library.settings();
    return library.keys() || library.disk().exists(library.folder() / left_lock_name) ||
           settings.get(lock_mark_setting) || settings.get(taken_off_setting);
}

}  // namespace quarterturn
