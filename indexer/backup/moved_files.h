#pragma once
// Which of the files that no record speaks of are a photo that is missing elsewhere, since somebody
// moved it within the library, or a copy of one that changed. Moved in a locked library, it is one
// that the lock does not see (past_lock.h).

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "indexer/backup/library_files.h"

namespace quarterturn {

class MovedFiles {
  public:
    explicit MovedFiles(Library& library) : library_(library) {}

    // Where it lies now, by its checksum; reads what has its size. Throw StoreError.
    std::optional<std::string> find(const LibraryFile& file);
    // The same of what the lock sees.
    std::optional<std::string> find_copy(const LibraryFile& file);
    // Gives it its place again. False where something lies there, and while another program moves
    // files of the library. Throws DiskError.
    bool put_back(const std::string& found, const LibraryFile& file);

  private:
    void look_around();
    bool is_file(const std::string& path, const LibraryFile& file);
    bool has_size_of(const std::string& path, const LibraryFile& file);
    std::string checksum_of(const std::string& path);
    void move(const std::string& found, const Path& place);

    Library& library_;
    bool looked_ = false;
    std::vector<std::string> unknown_;
    std::vector<std::string> past_lock_;
    std::map<std::string, std::string> checksums_;  // of those that were read, by their paths
};

}  // namespace quarterturn
