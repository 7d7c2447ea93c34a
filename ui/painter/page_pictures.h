#pragma once
// The photos of a page as they are drawn on it.

#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/sheet/box_picture.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// One picture for each photo of the page, in the order of its items, on paper, decoded two at
// a time for `dpi` dots per inch.
std::vector<BoxPicture> pictures_of(const Page& page, double dpi, Decoder& decoder,
                                    FileSystem& disk);

// A sentence for each photo that is not shown.
std::vector<std::string> problems_of(const Page& page, const std::vector<BoxPicture>& pictures);

}  // namespace quarterturn
