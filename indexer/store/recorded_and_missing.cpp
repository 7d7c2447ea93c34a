#include "indexer/store/recorded_and_missing.h"

#include "indexer/store/database.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_in_memory.h"

namespace quarterturn {
namespace {

std::vector<std::string> recorded_paths(const Path& file) {
    RecordsInMemory records(file);
    std::vector<std::string> paths;
    for (const std::string table : {"photo", "consent_paper", "inspiration"}) {
        if (!records.handle().tableExists(table)) continue;
        SQLite::Statement rows(records.handle(), "SELECT path FROM " + table + " ORDER BY path");
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
