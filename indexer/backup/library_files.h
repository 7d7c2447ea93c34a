#pragma once
// The files that a library must not lose: what its records speak of, and the texts she wrote.

#include <optional>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct LibraryFile {
    std::string path;  // relative to the library's folder
    std::string sha256;
    std::int64_t bytes = -1;         // -1 where the records do not say
    std::optional<PhotoId> photo{};  // nothing for papers, clients' pictures and texts
};

// Photos by their numbers, then the papers of consents, then the pictures that clients brought.
// Throws StoreError.
std::vector<LibraryFile> recorded_files(Library& library);

// Texts in the library's folder that no record speaks of: the wording of the consent form, the
// rules of the recipe check. Reads them. Throws DiskError.
std::vector<LibraryFile> loose_texts(Library& library);

// Whether the file holds these bytes: of the size, where it is known, and the checksum. Reads all
// of it. Throws DiskError; a file that is not there holds nothing.
bool holds(FileSystem& disk, const Path& file, const LibraryFile& wanted);

// Whether it lies there with the size the records say, without reading it. Throws DiskError.
bool lies_there(FileSystem& disk, const Path& file, const LibraryFile& wanted);
bool has_size(const FileState& state, const LibraryFile& wanted);

// The library's own file, by one look at it. Where the disk does not say, nothing is known of it
// and it counts as there.
struct OwnFile {
    bool gone = false;
    std::optional<FileState> state;
};
OwnFile look_at_own(FileSystem& disk, const Path& file);

}  // namespace quarterturn
