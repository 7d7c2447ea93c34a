#pragma once

#include "indexer/record/photo.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

// A photo with its caption: the angle, the clock time, and what is to be said of it.
SheetCell photo_cell(const Photo& photo, const Path& library_folder);

// The same where she looks for one frame among many: with its stage and the file's name. The
// columns are narrow there, so the time stands below the angle.
SheetCell frame_cell(const Photo& photo, const Path& library_folder);

}  // namespace quarterturn
