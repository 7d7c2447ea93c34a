#include "ui/painter/head_drawing.h"

#include <QPainter>
#include <QPen>
#include <algorithm>
#include <cmath>

#include "indexer/rules/drawing_on_head.h"
#include "ui/painter/ring.h"

namespace quarterturn {
namespace {

// What the head's outline takes of its ring's side: nose above, ears beside.
constexpr double head_width = 0.45;
constexpr double head_top = 0.27;      // above the ring's middle
constexpr double head_bottom = 0.225;  // below it

// Shares of the head's width.
constexpr double outline_width = 0.008;
constexpr double parting_width = 0.022;
constexpr double section_width = 0.014;
constexpr double mark_size = 0.052;  // half its side

struct Handles {
    QPointF before;
    QPointF after;
};

QPointF unit(const QPointF& vector) {
    const double length = std::hypot(vector.x(), vector.y());
    return length == 0 ? QPointF() : vector / length;
}

// The curve leaves a point in the direction of its neighbours, a third of the way to each, so that
// it never swings out further than they lie.
Handles handles_at(const std::vector<QPointF>& points, std::size_t i, bool round) {
    const std::size_t last = points.size() - 1;
    const bool end = i == 0 || i == last;
    if (end && !round) return {points[i], points[i]};
    const QPointF before = points[i == 0 ? last - 1 : i - 1];
    const QPointF after = points[i == last ? 1 : i + 1];
    const QPointF along = unit(after - before);
    const auto third = [&](const QPointF& other) {
        return std::hypot(other.x() - points[i].x(), other.y() - points[i].y()) / 3;
    };
    return {points[i] - along * third(before), points[i] + along * third(after)};
}

QPen stroke_pen(const QRectF& box, StrokeKind kind, const DrawingColours& colours) {
    const double width = skull(head_ring_box(box)).width();
    if (kind == StrokeKind::parting) {
        return {colours.parting, width * parting_width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
    }
    QPen pen(colours.line, width * section_width, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({3, 2});
    return pen;
}

void draw_mark(QPainter& painter, const QRectF& box, const PlanMark& mark,
               const DrawingColours& colours) {
    const double radius = mark_radius(box);
    const QPointF middle = in_head_box(box, mark.at);
    painter.setPen(QPen(colours.line, radius * 0.16));
    painter.setBrush(colours.paper);
    painter.drawEllipse(middle, radius, radius);
    const QString number = QString::number(mark.number);
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(std::max(1, qRound(radius * (number.size() > 1 ? 1.0 : 1.3))));
    painter.setFont(font);
    painter.setPen(colours.in_marks);
    const QPointF corner(radius, radius);
    painter.drawText(QRectF(middle - corner, middle + corner), Qt::AlignCenter, number);
}

}  // namespace

QRectF head_ring_box(const QRectF& box) {
    const double side = std::min(box.width() / head_width, box.height() / (head_top + head_bottom));
    QRectF ring(0, 0, side, side);
    ring.moveCenter({box.center().x(), box.center().y() + (head_top - head_bottom) / 2 * side});
    return ring;
}

QPointF in_head_box(const QRectF& box, PlanPoint point) {
    const QRectF head = skull(head_ring_box(box));
    return head.center() + QPointF(point.x * head.width(), point.y * head.height()) / 2;
}

PlanPoint on_head_plan(const QRectF& box, const QPointF& point) {
    const QRectF head = skull(head_ring_box(box));
    const QPointF away = point - head.center();
    return {2 * away.x() / head.width(), 2 * away.y() / head.height()};
}

double mark_radius(const QRectF& box) {
    return mark_size * skull(head_ring_box(box)).width();
}

QPainterPath stroke_path(const QRectF& box, const Stroke& stroke) {
    std::vector<QPointF> points;
    for (const PlanPoint& point : stroke.points) points.push_back(in_head_box(box, point));
    QPainterPath path;
    if (points.empty()) return path;
    const bool round = goes_round(stroke);
    path.moveTo(points.front());
    for (std::size_t i = 1; i < points.size(); ++i) {
        path.cubicTo(handles_at(points, i - 1, round).after, handles_at(points, i, round).before,
                     points[i]);
    }
    return path;
}

void draw_head_drawing(QPainter& painter, const QRectF& box, const HeadDrawing& drawing,
                       const DrawingColours& colours) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Stroke& stroke : drawing.strokes) {
        const bool area = stroke.kind == StrokeKind::section && goes_round(stroke);
        if (area) painter.fillPath(stroke_path(box, stroke), colours.tint);
    }
    const QRectF ring = head_ring_box(box);
    painter.strokePath(head_outline(ring),
                       QPen(colours.outline, skull(ring).width() * outline_width));
    for (const Stroke& stroke : drawing.strokes) {
        painter.strokePath(stroke_path(box, stroke), stroke_pen(box, stroke.kind, colours));
    }
    for (const PlanMark& mark : drawing.marks) draw_mark(painter, box, mark, colours);
    painter.restore();
}

}  // namespace quarterturn
