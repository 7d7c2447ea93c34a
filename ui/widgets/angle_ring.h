#pragma once

#include <QRectF>

#include "indexer/record/words.h"

class QPainter;
class QPalette;

namespace quarterturn {

// The small ring of one angle: the quarter where the camera stood is filled, a quarter turned half
// way for the three-quarter angles, the head itself for the crown; nothing for a detail. The word
// stands beside it.
void draw_angle_ring(QPainter& painter, const QRectF& box, Angle angle, const QPalette& palette);

}  // namespace quarterturn
