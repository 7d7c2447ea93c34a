#pragma once
// Partings, sections and marks on the head seen from above, drawn here only, for screen and paper.
// A parting is a solid line, a section a dashed one, so that nothing hangs on colour; a section
// that goes all the way round is tinted. All colours are laid on without transparency, as an
// archived PDF wants it.

#include <QColor>
#include <QPainterPath>
#include <QRectF>
#include <optional>

#include "indexer/record/recipe/head_drawing.h"

class QPainter;

namespace quarterturn {

struct DrawingColours {
    QColor outline;   // of the head
    QColor line;      // of sections and round the marks
    QColor parting;   // of partings
    QColor tint;      // within sections
    QColor paper;     // within marks
    QColor in_marks;  // their numbers
};

// The head, with its nose at the top, stands in the middle of `box` as large as fits.
void draw_head_drawing(QPainter& painter, const QRectF& box, const HeadDrawing& drawing,
                       const DrawingColours& colours);

// The box of a ring (ring.h) whose head stands in this box so.
QRectF head_ring_box(const QRectF& box);

// From points of the drawing to points of the box, and back.
QPointF in_head_box(const QRectF& box, PlanPoint point);
PlanPoint on_head_plan(const QRectF& box, const QPointF& point);

// The line of a stroke as a smooth curve through its points.
QPainterPath stroke_path(const QRectF& box, const Stroke& stroke);

// Widths and sizes follow the head: half the side of a mark.
double mark_radius(const QRectF& box);

}  // namespace quarterturn
