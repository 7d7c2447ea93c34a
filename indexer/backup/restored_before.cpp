#include "indexer/backup/restored_before.h"

#include <map>
#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

bool is_of_restoring(const std::string& path) {
    return path == lock_file_name || Path(path).begin()->native() == restoring_folder_name;
}

void refuse_unless_listed(const std::set<std::string>& checksums, const std::string& checksum,
                          const Path& file) {
    if (checksums.contains(checksum)) return;
    throw StoreError(file.string() +
                     " is not from this backup, and all there was left as it is: name a new folder "
                     "to restore into.");
}

}  // namespace

void drop_restored_before(FileSystem& disk, const Path& to, const Manifest& listed,
                          const std::vector<LibraryFile>& files) {
    std::map<std::string, std::string> wanted;
    for (const LibraryFile& file : files) wanted[file.path] = file.sha256;
    std::set<std::string> checksums;
    for (const auto& [path, checksum] : listed.files) checksums.insert(checksum);
    std::vector<std::string> unwanted;
    for (const Path& file : files_below(disk, to)) {
        const std::string path = file.lexically_relative(to).generic_string();
        if (is_of_restoring(path)) continue;
        if (is_unseen_name(file)) {  // left by a power cut
            unwanted.push_back(path);
            continue;
        }
        const std::string checksum = sha256_of_file(disk, file);
        const auto place = wanted.find(path);
        if (place != wanted.end() && place->second == checksum) continue;
        refuse_unless_listed(checksums, checksum, file);
        unwanted.push_back(path);
    }
    for (const std::string& path : unwanted) {
        disk.remove(to / path);
        drop_empty_folders(disk, to, Path(path).parent_path());
    }
}

}  // namespace quarterturn
