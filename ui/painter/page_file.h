#pragma once

#include "indexer/disk/file_system.h"
#include "ui/painter/paint_page.h"

namespace quarterturn {

enum class PageFormat { jpeg, png };

// The page as a file at print_dpi, tagged sRGB. Painted and encoded strip by strip, two at a
// time, as the pictures come.
Bytes page_file(const Page& page, const PagePictures& pictures, PageFormat format);

}  // namespace quarterturn
