#include "ui/widgets/angle_ring.h"

#include <QPainter>

#include "ui/painter/ring.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double half_a_quarter = 45;  // degrees

Ring ring_of(Angle angle) {
    Ring ring{};
    ring.fill(Quarter::missing);
    for (std::size_t i = 0; i < ring.size(); ++i) {
        if (quarter_angles[i] == angle) ring[i] = Quarter::covered;
    }
    return ring;
}

// The quarter before the face, turned to where the camera stood.
QPainterPath turned_quarter(const QRectF& box, double degrees) {
    QTransform turn;
    turn.translate(box.center().x(), box.center().y());
    turn.rotate(degrees);
    turn.translate(-box.center().x(), -box.center().y());
    return turn.map(ring_quarter(box, Angle::front));
}

}  // namespace

void draw_angle_ring(QPainter& painter, const QRectF& box, Angle angle, const QPalette& palette) {
    const QColor fill = accent_colour(palette);
    draw_ring(painter, box, ring_of(angle), {outline_colour(palette), fill});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (angle == Angle::left_three_quarter) {
        painter.fillPath(turned_quarter(box, -half_a_quarter), fill);
    } else if (angle == Angle::right_three_quarter) {
        painter.fillPath(turned_quarter(box, half_a_quarter), fill);
    } else if (angle == Angle::crown) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(fill);
        painter.drawEllipse(skull(box));
    }
    painter.restore();
}

}  // namespace quarterturn
