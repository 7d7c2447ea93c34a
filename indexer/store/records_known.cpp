#include "indexer/store/records_known.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <span>
#include <sstream>

#include "indexer/store/migrations/migrations.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_note_bytes = 64;

Path note_of(const Path& records) {
    return Path(records.native() + ending_of_note);
}

// Named like what is left of records in the making, for what is cleared away and stays unlocked.
Path waiting_note_of(const Path& records) {
    return Path(records.native() + ".new-note");
}

void replace_note(FileSystem& disk, const Path& records, const std::string& text) {
    const Path waiting = waiting_note_of(records);
    if (disk.exists(waiting)) disk.remove(waiting);
    disk.write_new(waiting, std::as_bytes(std::span(text)));
    disk.sync_file(waiting);
    disk.rename_over(waiting, note_of(records));
    disk.sync_folder(records.parent_path());
}

}  // namespace

RecordsKnown::RecordsKnown(const Path& records, SQLite::Database& handle, FileSystem& disk)
    : records_(records), noted_(in_note(disk)) {
    try {
        found_ = in_records(handle);
    } catch (const SQLite::Exception&) {
        found_ = noted_;  // damaged records are told of by who reads them
    }
}

RecordsKnown::Known RecordsKnown::in_records(SQLite::Database& handle) {
    return {schema_version(handle),
            handle.execAndGet("SELECT coalesce(sum(seq), 0) FROM sqlite_sequence").getInt64()};
}

RecordsKnown::Known RecordsKnown::in_note(FileSystem& disk) const try {
    const Path note = note_of(records_);
    if (!disk.exists(note)) return {};
    const Bytes bytes = disk.read(note, most_note_bytes);
    std::istringstream words(
        std::string(reinterpret_cast<const char*>(bytes.data()), bytes.size()));
    Known known;
    return words >> known.version >> known.rows ? known : Known{};
} catch (const DiskError&) {
    return {};
}

void RecordsKnown::note(SQLite::Database& handle, FileSystem& disk) const {
    const Known now = in_records(handle);
    if (now == noted_ || (older() && now == found_)) return;
    replace_note(disk, records_,
                 std::to_string(now.version) + ' ' + std::to_string(now.rows) + '\n');
}

std::string older_sentence(const Path& records) {
    return records.string() +
           " is older than it was when the library was closed here: an older file was put in its "
           "place, as services do that copy folders, and what was recorded since is not in it. "
           "Nothing was changed. Before you go on with it, look in the folder for a copy that such "
           "a service or this program kept, and for a backup that is newer: qturn restore, or the "
           "window's first page, makes the library again from it in a new place. This is said "
           "until something is added here. Keep the library in a folder that no such service "
           "copies.";
}

}  // namespace quarterturn
