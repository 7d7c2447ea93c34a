#include "ui/painter/ring.h"

#include <QPainter>
#include <QPen>
#include <cmath>
#include <numbers>

namespace quarterturn {
namespace {

// Shares of the box's side.
constexpr double outer_radius = 0.48;
constexpr double inner_radius = 0.335;
constexpr double head_radius = 0.215;
constexpr double gap_degrees = 7;
constexpr double quarter_degrees = 90;

QRectF square_in(const QRectF& box) {
    const double side = std::min(box.width(), box.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(box.center());
    return square;
}

QRectF circle(const QRectF& square, double radius) {
    const double r = radius * square.width();
    return {square.center().x() - r, square.center().y() - r, 2 * r, 2 * r};
}

// Counter-clockwise from three o'clock, as QPainterPath counts.
std::optional<double> middle_degrees(Angle quarter) {
    switch (quarter) {
        case Angle::right:
            return 0;
        case Angle::front:
            return 90;
        case Angle::left:
            return 180;
        case Angle::back:
            return 270;
        default:
            return std::nullopt;
    }
}

QPainterPath arc_band(const QRectF& square, double from, double sweep, double inner, double outer) {
    QPainterPath path;
    path.arcMoveTo(circle(square, outer), from);
    path.arcTo(circle(square, outer), from, sweep);
    path.arcTo(circle(square, inner), from + sweep, -sweep);
    path.closeSubpath();
    return path;
}

QPainterPath inner_half(const QRectF& square, double middle) {
    const double sweep = quarter_degrees - gap_degrees;
    return arc_band(square, middle - sweep / 2, sweep, inner_radius,
                    (inner_radius + outer_radius) / 2);
}

void draw_hatching(QPainter& painter, const QPainterPath& quarter, double spacing,
                   const QPen& pen) {
    painter.save();
    painter.setClipPath(quarter, Qt::IntersectClip);
    painter.setPen(pen);
    const QRectF area = quarter.boundingRect();
    for (double x = area.left() - area.height(); x < area.right(); x += spacing) {
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
    }
    painter.restore();
}

void draw_middle_line(QPainter& painter, const QRectF& square, double middle, const QPen& pen) {
    const double sweep = quarter_degrees - 2 * gap_degrees;
    const QRectF along = circle(square, (inner_radius + outer_radius) / 2);
    QPainterPath line;
    line.arcMoveTo(along, middle - sweep / 2);
    line.arcTo(along, middle - sweep / 2, sweep);
    painter.strokePath(line, pen);
}

void draw_quarter(QPainter& painter, const QRectF& square, Angle angle, Quarter stands,
                  const RingColours& colours) {
    const QPainterPath path = ring_quarter(square, angle);
    const double side = square.width();
    QPen pen(colours.outline, std::max(side * 0.018, 0.6));
    pen.setJoinStyle(Qt::RoundJoin);
    switch (stands) {
        case Quarter::covered:
            painter.fillPath(path, colours.fill);
            painter.strokePath(
                path, QPen(colours.fill, pen.widthF(), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
            break;
        case Quarter::weak:
            draw_hatching(painter, path, side * 0.075, QPen(colours.fill, side * 0.026));
            painter.strokePath(path, pen);
            break;
        case Quarter::partly:
            painter.fillPath(inner_half(square, *middle_degrees(angle)), colours.fill);
            painter.strokePath(path, pen);
            break;
        case Quarter::missing:
            painter.strokePath(path, pen);
            break;
        case Quarter::waived:
            pen.setWidthF(std::max(side * 0.03, 0.8));
            draw_middle_line(painter, square, *middle_degrees(angle), pen);
            break;
    }
}

}  // namespace

QPainterPath ring_quarter(const QRectF& box, Angle quarter) {
    const auto middle = middle_degrees(quarter);
    if (!middle) return {};
    const double sweep = quarter_degrees - gap_degrees;
    return arc_band(square_in(box), *middle - sweep / 2, sweep, inner_radius, outer_radius);
}

std::optional<Angle> ring_quarter_at(const QRectF& box, const QPointF& point) {
    const QRectF square = square_in(box);
    const QPointF from_centre = point - square.center();
    const double distance = std::hypot(from_centre.x(), from_centre.y());
    if (distance < 0.1 * square.width() || distance > outer_radius * square.width()) {
        return std::nullopt;
    }
    if (std::abs(from_centre.x()) > std::abs(from_centre.y())) {
        return from_centre.x() < 0 ? Angle::left : Angle::right;
    }
    return from_centre.y() < 0 ? Angle::front : Angle::back;
}

QRectF skull(const QRectF& box) {
    const QRectF square = square_in(box);
    const QSizeF half(head_radius * 0.88 * square.width(), head_radius * square.width());
    return {square.center().x() - half.width(), square.center().y() - half.height(),
            2 * half.width(), 2 * half.height()};
}

QPainterPath head_outline(const QRectF& box) {
    const QRectF square = square_in(box);
    const double side = square.width();
    const QPointF centre = square.center();
    QPainterPath head;
    head.addEllipse(skull(box));
    QPainterPath nose;
    nose.moveTo(centre + QPointF(-0.045, -head_radius * 0.96) * side);
    nose.quadTo(centre + QPointF(0, -head_radius * 1.38) * side,
                centre + QPointF(0.045, -head_radius * 0.96) * side);
    nose.closeSubpath();
    QPainterPath ears;
    for (const double away : {-0.89, 0.89}) {
        ears.addEllipse(centre + QPointF(away * head_radius, -0.01) * side, 0.028 * side,
                        0.055 * side);
    }
    return head.united(nose).united(ears);
}

void draw_ring(QPainter& painter, const QRectF& box, const Ring& ring, const RingColours& colours) {
    const QRectF square = square_in(box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < ring.size(); ++i) {
        draw_quarter(painter, square, quarter_angles[i], ring[i], colours);
    }
    painter.strokePath(head_outline(square),
                       QPen(colours.outline, std::max(square.width() * 0.018, 0.6)));
    painter.restore();
}

}  // namespace quarterturn
