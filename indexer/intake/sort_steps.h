#pragma once
// The two halves of sorting, for those who hold the move lock already or need no files moved.

#include "indexer/intake/sort.h"

namespace quarterturn {

// The records alone: sittings and suggested stages.
SortReport place_by_time(Library& library);

// The files alone, of all photos or of these; answers what the disk did not do. The move lock must
// be held.
std::vector<DiskError> move_to_folders(Library& library);
std::vector<DiskError> move_to_folders(Library& library, std::vector<Photo> photos);
std::vector<RefusedFile> refused_files(const std::vector<DiskError>& errors);

}  // namespace quarterturn
