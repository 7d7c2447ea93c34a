#include "indexer/erasure/files_without_record.h"

#include <algorithm>

#include "indexer/store/erasure_table.h"
#include "indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

FilesInReach reached_in(FileSystem& disk, const Path& folder) try {
    if (!disk.exists(folder)) return {};
    return files_in_reach(disk, folder, [](const Path&) { return false; });
} catch (const DiskError& error) {
    return {{}, {error}};
}

}  // namespace

std::set<std::string> paths_in_records(Library& library) {
    std::set<std::string> paths;
    for (StoredFile& photo : library.photos().stored_files()) paths.insert(std::move(photo.path));
    for (const ConsentPaper& paper : library.consents().papers()) paths.insert(paper.path);
    for (const Inspiration& brought : library.inspirations().all()) {
        paths.insert(brought.path.generic_string());
    }
    return paths;
}

FilesWithoutRecord files_without_record(Library& library) {
    std::set<std::string> known = paths_in_records(library);
    for (std::string& path : ErasureTable(library.database()).files_left()) {
        known.insert(std::move(path));
    }
    const auto relative = [&](const Path& entry) {
        return entry.lexically_relative(library.folder()).generic_string();
    };
    FilesWithoutRecord unknown;
    for (const char* kept : folders_of_hers) {
        const FilesInReach found = reached_in(library.disk(), library.folder() / kept);
        for (const Path& file : found.files) {
            std::string path = relative(file);
            if (!known.contains(path)) unknown.files.push_back(std::move(path));
        }
        for (const DiskError& error : found.out_of_reach) {
            unknown.out_of_reach.push_back(relative(error.file()));
        }
    }
    std::ranges::sort(unknown.files);
    return unknown;
}

}  // namespace quarterturn
