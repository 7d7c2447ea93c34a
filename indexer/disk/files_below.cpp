#include "indexer/disk/file_system.h"

namespace quarterturn {
namespace {

void gather(FileSystem& disk, const Path& folder, std::vector<Path>& files) {
    for (const Path& entry : disk.list(folder)) {
        if (disk.is_folder(entry)) {
            gather(disk, entry, files);
        } else {
            files.push_back(entry);
        }
    }
}

class Reaching {
  public:
    Reaching(FileSystem& disk, const std::function<bool(const Path&)>& passed_over)
        : disk_(disk), passed_over_(passed_over) {}

    void enter(const Path& folder) {
        for (const Path& entry : disk_.list(folder)) {
            if (!passed_over_(entry)) meet(entry);
        }
    }

    FilesInReach found;

  private:
    void meet(const Path& entry) try {
        if (disk_.is_folder(entry)) {
            enter(entry);
        } else {
            found.files.push_back(entry);
        }
    } catch (const DiskError& error) {
        found.out_of_reach.push_back(error);
    }

    FileSystem& disk_;
    const std::function<bool(const Path&)>& passed_over_;
};

}  // namespace

std::vector<Path> files_below(FileSystem& disk, const Path& folder) {
    std::vector<Path> files;
    if (disk.exists(folder)) gather(disk, folder, files);
    return files;
}

FilesInReach files_in_reach(FileSystem& disk, const Path& folder,
                            const std::function<bool(const Path&)>& passed_over) {
    Reaching reaching(disk, passed_over);
    reaching.enter(folder);
    return std::move(reaching.found);
}

}  // namespace quarterturn
