#pragma once

#include "indexer/image/decode.h"
#include "indexer/sheet/sheet_content.h"
#include "indexer/sheet/sheet_style.h"

namespace quarterturn {

// Decodes each photo once, as small as the sheet needs it, four at a time; looks for the head, and
// leaves the picture with the photo for whoever draws it, up to a bound of memory. A photo that
// cannot be decoded is left as it is: the painter will say so. A detail has no head to be found.
void find_heads(SheetContent& content, const SheetStyle& style, Decoder& decoder, FileSystem& disk);

}  // namespace quarterturn
