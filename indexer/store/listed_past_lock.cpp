#include "indexer/store/listed_past_lock.h"

#include "indexer/disk/empty_folders.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_in_memory.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

// No path that is relative to the folder begins so.
constexpr std::string_view begins_past_lock = "./";

std::vector<Path> listed_places(const Path& records) {
    std::vector<Path> places;
    in_words([&] {
        RecordsInMemory plain(records);
        if (!plain.handle().tableExists("erasure_file")) return;
        SQLite::Statement rows(plain.handle(), "SELECT path FROM erasure_file");
        while (rows.executeStep()) {
            if (auto place = place_past_lock(rows.getColumn(0).getString())) {
                places.push_back(std::move(*place));
            }
        }
    });
    return places;
}

void remove_there(FileSystem& disk, const Path& folder, const Path& place) {
    const Path file = folder / place;
    if (!disk.exists(file)) return;
    disk.remove(file);
    disk.sync_folder(file.parent_path());
    drop_empty_folders(disk, folder, place.parent_path());
}

}  // namespace

std::string listed_past_lock(const Path& lies) {
    return std::string(begins_past_lock) + lies.generic_string();
}

std::optional<Path> place_past_lock(const std::string& listed) {
    if (!listed.starts_with(begins_past_lock)) return std::nullopt;
    return listed.substr(begins_past_lock.size());
}

std::vector<RefusedFile> remove_listed_past_lock(FileSystem& disk, const Path& folder) {
    std::vector<RefusedFile> undone;
    for (const Path& place : listed_places(folder / records_file_name)) {
        try {
            remove_there(disk, folder, place);
        } catch (const DiskError& error) {
            undone.push_back({error.file(), error.what()});
        }
    }
    return undone;
}

}  // namespace quarterturn
