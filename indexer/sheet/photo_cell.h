#pragma once

#include "indexer/record/photo.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

// A photo with its caption: the angle, the clock time, and what is to be said of it.
SheetCell photo_cell(const Photo& photo, const Path& library_folder);

}  // namespace quarterturn
