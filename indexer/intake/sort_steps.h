#pragma once
// The two halves of sorting, for those who hold the move lock already or need no files moved.

#include "indexer/intake/sort.h"

namespace quarterturn {

// The records alone: sittings and suggested stages.
SortReport place_by_time(Library& library);

// The files alone, of all photos or of these. The move lock must be held.
void move_to_folders(Library& library);
void move_to_folders(Library& library, std::vector<Photo> photos);

}  // namespace quarterturn
