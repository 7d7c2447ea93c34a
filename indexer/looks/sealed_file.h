#pragma once

#include "indexer/store/library.h"

namespace quarterturn {

// A photo's file as the disk has it. Throws StoreError when its checksum is no longer the one it
// was brought in with, and DiskError when it cannot be read.
Bytes read_unchanged(Library& library, const Photo& photo);

}  // namespace quarterturn
