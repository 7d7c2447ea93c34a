#pragma once
// What stands on and under a photo, from its record.

#include "indexer/record/photo.h"
#include "ui/widgets/draw_photo.h"

namespace quarterturn {

// Without picture and caption.
PhotoLook look_of(const Photo& photo);

QString time_or_name(const Photo& photo);  // "10:12"; its name when the time is unknown

}  // namespace quarterturn
