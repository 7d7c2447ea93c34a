#include "ui/sign_off/seal_mark.h"

#include <QPainter>
#include <QPainterPath>
#include <numbers>

#include "ui/painter/ring.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 26;
constexpr int waves = 36;
constexpr int points_of_wave = 10;
constexpr double wave_height = 0.018;  // of the side

// A round edge that waves like pressed wax.
QPainterPath waving_edge(const QRectF& box) {
    QPainterPath edge;
    const double radius = box.width() / 2 * (1 - 2 * wave_height);
    for (int i = 0; i < waves * points_of_wave; ++i) {
        const double turn = 2 * std::numbers::pi * i / (waves * points_of_wave);
        const double r = radius + box.width() * wave_height * std::cos(waves * turn);
        const QPointF point = box.center() + QPointF(r * std::cos(turn), r * std::sin(turn));
        i == 0 ? edge.moveTo(point) : edge.lineTo(point);
    }
    edge.closeSubpath();
    return edge;
}

}  // namespace

SealMark::SealMark(QWidget* parent) : QWidget(parent) {
    setFixedSize(space(side_steps), space(side_steps));
}

void SealMark::show_ring(const Ring& ring) {
    ring_ = ring;
    update();
}

void SealMark::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(2, 2, -2, -2);
    const QColor accent = accent_colour(palette());
    painter.setBrush(wash_colour(palette()));
    painter.setPen(QPen(accent, 2));
    painter.drawPath(waving_edge(box));
    painter.setBrush(card_colour(palette()));
    const double inset = box.width() * 0.1;
    painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
    const double ring = box.width() * 0.2;
    draw_ring(painter, box.adjusted(ring, ring, -ring, -ring), ring_,
              {outline_colour(palette()), accent});
}

}  // namespace quarterturn
