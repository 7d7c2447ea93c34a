#pragma once

#include <QPainterPath>
#include <QRectF>

namespace quarterturn {

// Strands of hair as they lie on the head of a ring that fills `box` (ui/painter/ring.h): they run
// out from the whorl at the crown. Ornament for the large plan; too fine for small rings.
QPainterPath hair_strands(const QRectF& box);

}  // namespace quarterturn
