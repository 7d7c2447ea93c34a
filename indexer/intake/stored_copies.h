#pragma once
// The library's own files, by the checksum they were brought in with. A photo is in the library
// only while its file is there and holds those bytes; otherwise it is taken in again.

#include <string>
#include <unordered_map>

#include "indexer/intake/walk.h"

namespace quarterturn {

// Whether both names lead to one file on the disk, by a link of either kind.
bool one_file(const Path& one, const Path& other);

class StoredCopies {
  public:
    explicit StoredCopies(Library& library);

    // Whether a record speaks of it.
    bool knows(const std::string& sha256) const { return files_.contains(sha256); }

    // Whether the file lies there just as it did when it was last read whole (size and time of
    // change), so that it need not be read. Asks the records: only for the library's own thread.
    // Not where it is the very file that is to be brought in, by a link.
    bool known_whole(const std::string& sha256, const Path& source, SeenTable& seen) const;

    // The file as it lies there, when it holds the content; reads all of it. Safe to use from
    // several threads at once.
    std::optional<FoundFile> whole_copy(const std::string& sha256) const;

  private:
    std::optional<FoundFile> as_it_lies(const std::string& sha256) const;

    Library& library_;
    std::unordered_map<std::string, StoredFile> files_;
};

}  // namespace quarterturn
