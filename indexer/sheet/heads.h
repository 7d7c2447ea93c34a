#pragma once

#include "indexer/image/decode.h"
#include "indexer/sheet/sheet_content.h"
#include "indexer/sheet/sheet_style.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Both look for the head where nobody has yet, and keep what they found in the library for the next
// time. A photo that cannot be decoded is left as it is: the painter will say so. A detail has no
// head to be found.

// Decodes each photo once, as small as the sheet needs it, four at a time, and leaves the picture
// with the photo for whoever draws it, up to a bound of memory.
void find_heads(SheetContent& content, const SheetStyle& style, Library& library,
                Decoder& decoder);

// In the small pictures, for what draws others: photos whose heads are known are not opened.
void find_heads(std::vector<SheetPhoto>& photos, Library& library, Decoder& decoder);

}  // namespace quarterturn
