#pragma once
// Pictures that clients bring along, kept with them as somebody else's work. They lie in the
// library under inspiration/; no export reads them.

#include "indexer/store/library.h"

namespace quarterturn {

// Copies the picture as it is; the same one again for the same client is kept once. Throws
// DiskError when it cannot be read or written, and StoreError.
Inspiration keep_inspiration(Library& library, const Path& picture, ClientId client,
                             LocalTime kept_at);

// The row goes first, so that nothing is listed that is not there. Throws StoreError and DiskError.
void remove_inspiration(Library& library, InspirationId id);

Path inspiration_file(const Library& library, const Inspiration& inspiration);

}  // namespace quarterturn
