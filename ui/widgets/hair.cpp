#include "ui/widgets/hair.h"

#include <cmath>
#include <numbers>

#include "ui/painter/ring.h"

namespace quarterturn {
namespace {

constexpr int strands = 40;
constexpr double whorl_radius = 0.06;  // of the head's half width
constexpr double twist = 0.9;          // radians from the whorl to the hairline
constexpr double whorl_behind = 0.28;  // of the head's half height, towards the back

QPointF on_ellipse(const QPointF& centre, double half_width, double half_height, double angle) {
    return centre + QPointF(half_width * std::cos(angle), half_height * std::sin(angle));
}

}  // namespace

QPainterPath hair_strands(const QRectF& box) {
    const QRectF head = skull(box);
    const double half_width = head.width() / 2;
    const double half_height = head.height() / 2;
    const QPointF whorl = head.center() + QPointF(0, whorl_behind * half_height);
    QPainterPath path;
    for (int i = 0; i < strands; ++i) {
        const double angle = 2 * std::numbers::pi * i / strands;
        // Every second strand starts further out, so that the whorl stays open.
        const double start = half_width * (i % 2 == 0 ? whorl_radius : 4 * whorl_radius);
        const QPointF root = on_ellipse(whorl, start, start, angle);
        const QPointF tip =
            on_ellipse(head.center(), half_width * 0.93, half_height * 0.93, angle + twist);
        const QPointF bend = on_ellipse(whorl, half_width * 0.5, half_height * 0.5, angle + 0.2);
        path.moveTo(root);
        path.quadTo(bend, tip);
    }
    return path;
}

}  // namespace quarterturn
