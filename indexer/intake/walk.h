#pragma once
// Finding the files of a phone's folder or a card.
//
// Links inside a folder are never followed: what they lead to is either found by itself or lies
// outside of what she named. Hidden files and folders hold a phone's or computer's own thumbnails,
// halves and waste; they are left alone, and so are the thumbnail folders of cards.

#include <vector>

#include "indexer/intake/import.h"

namespace quarterturn {

struct FoundFile {
    Path file;
    FileState state;
};

struct Found {
    std::vector<FoundFile> files;  // ordinary files, each once, in the order of the walk
    std::vector<Path>
        left_alone;  // links, pipes, devices, hidden files; a folder stands for all in it
    std::vector<RefusedFile> refused;  // sources that are not there, folders that cannot be read
};

// Does not throw: what cannot be walked is refused. The library's own folder is refused as a source
// and left alone where it lies inside one.
Found walk(Library& library, const std::vector<Path>& sources);

}  // namespace quarterturn
