#pragma once
// The head seen from above, as she stands behind the chair: front at the top, back at the bottom,
// the client's left on the left. The same ring stands for a look everywhere, on paper and on
// screen, so it is drawn here only. Each verdict has a shape of its own, so that nothing hangs on
// colour: covered is solid, weak is hatched, partly covered is solid on its inner half, missing is
// an empty outline, waived is a thin line.

#include <QColor>
#include <QPainterPath>
#include <QRectF>
#include <optional>

#include "indexer/record/words.h"

class QPainter;

namespace quarterturn {

struct RingColours {
    QColor outline;  // of every quarter, and of the head
    QColor fill;     // of what is covered
};

// The ring is drawn in the largest square in the middle of
// `box`; angles and sizes follow the box, so it may be of any size from about 16 px on.
void draw_ring(QPainter& painter, const QRectF& box, const Ring& ring, const RingColours& colours);

// The quarter of the ring, one of quarter_angles; an empty path for any other angle.
QPainterPath ring_quarter(const QRectF& box, Angle quarter);

// Which quarter of the disc a point lies in, the middle fifth left out; nothing outside the ring.
std::optional<Angle> ring_quarter_at(const QRectF& box, const QPointF& point);

// The head itself with nose and ears, drawn inside a ring that fills the same box.
QPainterPath head_outline(const QRectF& box);

// Its oval without nose and ears.
QRectF skull(const QRectF& box);

}  // namespace quarterturn
