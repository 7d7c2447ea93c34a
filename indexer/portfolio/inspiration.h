#pragma once
// Pictures that clients bring along, kept with them as somebody else's work. They lie in the
// library under inspiration/; no export reads them.

#include "indexer/image/decode.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Copies the picture as it is; the same one again for the same client is kept once. Throws
// DiskError when it cannot be read or written, and StoreError.
Inspiration keep_inspiration(Library& library, const Path& picture, ClientId client,
                             LocalTime kept_at);

// The row goes first, so that nothing is listed that is not there. Throws StoreError and DiskError.
void remove_inspiration(Library& library, InspirationId id);

// Any picture from elsewhere, upright by its EXIF orientation, its long edge `long_edge` pixels or
// somewhat more; one that is no picture is a result whose `refused` says why. Throws DiskError when
// the file cannot be read, and NoWorker when nothing can open pictures.
Decoded picture_from_elsewhere(FileSystem& disk, Decoder& decoder, const Path& file, int long_edge);

Path inspiration_file(const Library& library, const Inspiration& inspiration);

}  // namespace quarterturn
