#include "indexer/erasure/listed_files.h"

#include <algorithm>
#include <map>
#include <set>

#include "indexer/disk/empty_folders.h"
#include "indexer/erasure/past_the_lock.h"
#include "indexer/intake/sort_steps.h"
#include "indexer/record/count_text.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/listed_past_lock.h"

namespace quarterturn {
namespace {

struct Listed {
    FileSystem& disk;
    Path path;  // relative to the library's folder
};

Listed listed_at(Library& library, const std::string& listed) {
    if (auto past_lock = place_past_lock(listed)) {
        return {disk_past_the_lock(library), std::move(*past_lock)};
    }
    return {library.disk(), listed};
}

void remove_file(Library& library, const std::string& listed) {
    const auto [disk, path] = listed_at(library, listed);
    const Path file = library.folder() / path;
    if (disk.exists(file)) {
        disk.remove(file);
        disk.sync_folder(file.parent_path());
    }
    drop_empty_folders(disk, library.folder(), path.parent_path());
}

// Of a library without a lock, what lay past one is where a record may name it.
std::string recordable(Library& library, const std::string& listed) {
    const auto past_lock = place_past_lock(listed);
    return past_lock && !library.keys() ? past_lock->generic_string() : listed;
}

// Brought in again since, also where the disk takes small letters for capitals.
bool is_recorded(Library& library, const std::string& path) {
    const auto is_it = [&](const auto& kept) { return Path(kept.path).generic_string() == path; };
    return library.photos().path_taken(path) ||
           std::ranges::any_of(library.consents().papers(), is_it) ||
           std::ranges::any_of(library.inspirations().all(), is_it);
}

// What the disk says of many files is told once, with one of them.
std::vector<std::string> told_at_once(const std::vector<DiskError>& kept) {
    std::map<std::string, std::vector<const DiskError*>> by_reason;
    for (const DiskError& error : kept) {
        const std::string words = error.what();
        const std::string front = error.file().string() + ' ';
        by_reason[words.starts_with(front) ? words.substr(front.size()) : words].push_back(&error);
    }
    std::vector<std::string> told;
    for (const auto& [reason, errors] : by_reason) {
        const std::string first = errors.front()->what();
        told.push_back(errors.size() == 1 ? first
                                          : first + " So it is with " +
                                                count_text(errors.size() - 1, "more file") +
                                                ", which qturn client erasures names.");
    }
    return told;
}

}  // namespace

FilesToGo files_of_photos(Library& library, const std::vector<Photo>& photos,
                          const FilesWithoutRecord& strays, OtherStrays others) {
    FilesToGo found = strays_of(library, photos, strays, others);
    std::vector<std::string>& files = found.files;
    std::set<std::string> sums;
    for (const Photo& photo : photos) {
        files.push_back(photo.file.path);
        sums.insert(photo.file.sha256);
    }
    constexpr std::size_t sum_digits = 64;
    for (const char* folder : {"cache", "incoming"}) {
        for (const Path& file : files_below(library.disk(), library.folder() / folder)) {
            if (sums.contains(file.filename().string().substr(0, sum_digits))) {
                files.push_back(file.lexically_relative(library.folder()).generic_string());
            }
        }
    }
    return found;
}

bool listed_lies_there(Library& library, const std::string& listed) {
    const auto [disk, path] = listed_at(library, listed);
    return disk.exists(library.folder() / path);
}

std::vector<std::string> words_of_still_listed(Library& library) {
    std::vector<std::string> words;
    for (const std::string& path : ErasureTable(library.database()).files_left()) {
        if (!listed_lies_there(library, path)) continue;
        words.push_back(path +
                        " is of an erasure, or of the bin, and could not be removed yet: do not "
                        "bring it in. Removing goes on by itself each time the library is opened; "
                        "see to the disk and to the file's permissions, and close other programs.");
    }
    return words;
}

void refuse_unless_alone(const MoveLock& lock) {
    if (lock.held()) return;
    throw StoreError(
        "Another program is moving photos of this library: wait until it has ended, and run the "
        "command again.");
}

std::vector<std::string> remove_listed(Library& library) {
    ErasureTable erasures(library.database());
    std::vector<DiskError> kept;
    const auto attempt = [&](const auto& act) {
        try {
            act();
        } catch (const DiskError& error) {
            kept.push_back(error);
        }
    };
    for (const std::string& path : erasures.files_left()) {
        attempt([&] {
            if (!is_recorded(library, recordable(library, path))) remove_file(library, path);
            erasures.file_is_gone(path);
        });
    }
    std::ranges::move(move_to_folders(library), std::back_inserter(kept));
    return told_at_once(kept);
}

}  // namespace quarterturn
