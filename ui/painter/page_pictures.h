#pragma once
// The photos of a page as they are drawn on it.

#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/sheet/box_picture.h"
#include "indexer/sheet/made_ahead.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// One for each photo of a page, in the order of its items, on paper.
using PagePictures = MadeAhead<BoxPicture>;

// Decoded two at a time for `dpi` dots per inch, from now on: drawing begins with the first of
// them. Page, decoder and disk must outlive them.
PagePictures pictures_of(const Page& page, double dpi, Decoder& decoder, FileSystem& disk);

// A sentence for each photo that is not shown.
std::vector<std::string> problems_of(const Page& page, const PagePictures& pictures);

}  // namespace quarterturn
