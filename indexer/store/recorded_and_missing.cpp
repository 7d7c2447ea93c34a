#include "indexer/store/recorded_and_missing.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include "indexer/store/database.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_watch.h"

namespace quarterturn {
namespace {

// https://sqlite.org/fileformat2.html#file_format_version_numbers: 1 is without a log.
void leave_log_out(Bytes& records) {
    constexpr std::size_t write_version = 18;
    constexpr std::size_t read_version = 19;
    if (records.size() <= read_version) return;
    records[write_version] = records[read_version] = std::byte{1};
}

std::vector<std::string> recorded_paths(const Path& file) {
    Bytes bytes = raw_records(file);
    leave_log_out(bytes);
    SQLite::Database records(":memory:", SQLite::OPEN_READWRITE);
    const auto size = static_cast<sqlite3_int64>(bytes.size());
    sqlite3_deserialize(records.getHandle(), "main", reinterpret_cast<unsigned char*>(bytes.data()),
                        size, size, SQLITE_DESERIALIZE_READONLY);
    std::vector<std::string> paths;
    for (const std::string table : {"photo", "consent_paper", "inspiration"}) {
        if (!records.tableExists(table)) continue;
        SQLite::Statement rows(records, "SELECT path FROM " + table + " ORDER BY path");
        while (rows.executeStep()) paths.push_back(rows.getColumn(0).getString());
    }
    return paths;
}

bool lies_missing(FileSystem& disk, const Path& file) try {
    return !disk.exists(file);
} catch (const DiskError&) {
    return true;
}

}  // namespace

std::vector<std::string> recorded_and_missing(FileSystem& disk, const Path& folder) try {
    std::vector<std::string> paths = recorded_paths(folder / records_file_name);
    std::erase_if(paths,
                  [&](const std::string& path) { return !lies_missing(disk, folder / path); });
    return paths;
} catch (const SQLite::Exception&) {
    return {records_file_name};
} catch (const StoreError&) {
    return {records_file_name};
}

}  // namespace quarterturn
