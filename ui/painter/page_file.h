#pragma once

#include "indexer/disk/file_system.h"
#include "ui/painter/paint_page.h"

namespace quarterturn {

enum class PageFormat { jpeg, png };

// The page as a file at print_dpi, tagged sRGB. Painted strip by strip as the pictures come, each of
// which is encoded while the next ones are painted.
Bytes page_file(const Page& page, const PagePictures& pictures, PageFormat format);

}  // namespace quarterturn
