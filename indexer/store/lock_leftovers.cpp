#include "indexer/store/lock_leftovers.h"

#include <algorithm>

#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_file_system.h"
#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

bool any_part_looks_locked(const Path& below) {
    return std::ranges::any_of(below, [](const Path& part) {
        return looks_locked(part.native()) || is_front_of_locked_name(part.native());
    });
}

// Where it cannot be read, as `unread` says.
bool contents_look_locked(FileSystem& disk, const Path& file, bool unread) try {
    return begin_as_locked(disk.read_front(file, locked_size(0)));
} catch (const DiskError&) {
    return unread;
}

// The program's own texts have their names in a locked library, too.
bool looks_locked_below(FileSystem& disk, const Path& folder, const Path& below) {
    return below.has_parent_path() ? any_part_looks_locked(below)
                                   : contents_look_locked(disk, folder / below, false);
}

std::vector<std::string> paths_below(const FilesInReach& found, const Path& folder) {
    std::vector<std::string> paths;
    const auto add = [&](const Path& entry) {
        paths.push_back(entry.lexically_relative(folder).generic_string());
    };
    for (const Path& file : found.files) add(file);
    for (const DiskError& error : found.out_of_reach) add(error.file());
    std::ranges::sort(paths);
    return paths;
}

}  // namespace

std::vector<std::string> readable_despite_lock(FileSystem& disk, const Path& folder) {
    const auto passed_over = [&](const Path& entry) {
        const Path below = entry.lexically_relative(folder);
        return stays_as_it_is(below) || looks_locked_below(disk, folder, below);
    };
    return paths_below(files_in_reach(disk, folder, passed_over), folder);
}

std::vector<std::string> locked_without_lock(FileSystem& disk, const Path& folder) {
    const auto passed_over = [&](const Path& entry) {
        return stays_as_it_is(entry.lexically_relative(folder));
    };
    FilesInReach found = files_in_reach(disk, folder, passed_over);
    std::erase_if(found.files, [&](const Path& file) {
        const Path below = file.lexically_relative(folder);
        return !looks_locked_below(disk, folder, below) ||
               !(lies_where_locked(below) || contents_look_locked(disk, file, true));
    });
    return paths_below(found, folder);
}

// One that was moved by hand while the library was locked kept its name when it was unlocked.
bool lies_where_locked(const Path& below) {
    const Path within = below.parent_path();
    const bool in_place = !within.has_parent_path() || looks_locked(within.filename().native()) ||
                          is_front_of_locked_name(within.filename().native());
    return in_place && any_part_looks_locked(below);
}

}  // namespace quarterturn
