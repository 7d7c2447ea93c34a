#include "indexer/backup/restoring_folder.h"

#include <algorithm>

#include "indexer/disk/write_once.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

// Also while it is written.
bool is_name_of_restoring(const std::string& name) {
    return name.starts_with(".writing-") || name.starts_with(records_file_name) ||
           name == of_what_name || name == "cache" || name == "incoming" || is_unseen_name(name);
}

// In a locked library the folder's names are locked, but for those of records.
std::string plain_name_of(const LockedFileSystem* locked, const Path& entry) {
    std::string name = entry.filename().native();
    if (locked == nullptr) return name;
    return unlock_name(locked->keys(), restoring_folder_name, name).value_or(name);
}

bool is_made_by_restoring(const LockedFileSystem* locked, const Path& entry) {
    const std::string name = plain_name_of(locked, entry);
    const bool as_it_lies = name == entry.filename().native();
    if (locked != nullptr && as_it_lies && !name.starts_with(records_file_name)) return false;
    return is_name_of_restoring(name);
}

}  // namespace

StoreError is_not_empty(const Path& to) {
    return StoreError(to.string() + " is not empty, and was left as it is: name a new folder.");
}

void refuse_others_in(const Path& restoring, FileSystem& beneath, const LockedFileSystem* locked) {
    if (!beneath.exists(restoring)) return;
    const bool all_its_own = beneath.is_folder(restoring) &&
                             std::ranges::all_of(beneath.list(restoring), [&](const Path& entry) {
                                 return is_made_by_restoring(locked, entry);
                             });
    if (!all_its_own) throw is_not_empty(restoring.parent_path());
}

}  // namespace quarterturn
