#include "indexer/store/recorded_and_missing.h"

#include "indexer/store/database.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_in_memory.h"

namespace quarterturn {
namespace {

std::map<std::string, std::string> checksums_in(const Path& folder) {
    RecordsInMemory records(folder / records_file_name);
    std::map<std::string, std::string> checksums;
    for (const std::string table : {"photo", "consent_paper", "inspiration"}) {
        if (!records.handle().tableExists(table)) continue;
        SQLite::Statement rows(records.handle(), "SELECT path, sha256 FROM " + table);
        while (rows.executeStep()) {
            checksums.emplace(rows.getColumn(0).getString(), rows.getColumn(1).getString());
        }
    }
    return checksums;
}

std::vector<Backup> backups_in(const Path& folder) {
    RecordsInMemory records(folder / records_file_name);
    std::vector<Backup> backups;
    if (!records.handle().tableExists("backup")) return backups;
    SQLite::Statement rows(records.handle(), "SELECT folder, mark FROM backup ORDER BY id");
    while (rows.executeStep()) {
        Backup& backup = backups.emplace_back();
        backup.folder = rows.getColumn(0).getString();
        backup.mark = rows.getColumn(1).getString();
    }
    return backups;
}

bool lies_missing(FileSystem& disk, const Path& file) try {
    return !disk.exists(file);
} catch (const DiskError&) {
    return true;
}

}  // namespace

std::vector<std::string> recorded_and_missing(FileSystem& disk, const Path& folder) try {
    std::vector<std::string> missing;
    for (const auto& [path, sha256] : checksums_in(folder)) {
        if (lies_missing(disk, folder / path)) missing.push_back(path);
    }
    return missing;
} catch (const SQLite::Exception&) {
    return {records_file_name};
} catch (const StoreError&) {
    return {records_file_name};
}

std::map<std::string, std::string> recorded_checksums(const Path& folder) try {
    return checksums_in(folder);
} catch (const std::runtime_error&) {
    return {};
}

std::vector<Backup> recorded_backups(const Path& folder) try {
    return backups_in(folder);
} catch (const std::runtime_error&) {
    return {};
}

}  // namespace quarterturn
