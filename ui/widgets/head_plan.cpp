#include "ui/widgets/head_plan.h"

#include <QMouseEvent>
#include <QPainter>

#include "ui/painter/ring.h"
#include "ui/theme/theme.h"
#include "ui/widgets/hair.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Going round as the eye does: the row left, front, right, back, then what lies between and above.
constexpr std::array tab_order{
    Angle::front, Angle::right_three_quarter, Angle::right, Angle::detail, Angle::back,
    Angle::left,  Angle::left_three_quarter,  Angle::crown};

constexpr double place_height = 0.29;  // share of the plan's height
constexpr double place_shape = 0.82;   // width by height: upright photos with a caption
constexpr double ring_side = 0.39;
constexpr double widest_plan = 1.7;  // width by height; more width stays empty at the sides
constexpr double crown_side = 0.33;  // of the ring

// Where the camera stood, in half-widths and half-heights from the middle.
QPointF direction_of(Angle angle) {
    switch (angle) {
        case Angle::front:
            return {0, -1};
        case Angle::back:
            return {0, 1};
        case Angle::left:
            return {-1, 0};
        case Angle::right:
            return {1, 0};
        case Angle::left_three_quarter:
            return {-0.78, -1};
        case Angle::right_three_quarter:
            return {0.78, -1};
        case Angle::detail:
            return {0.78, 1};
        case Angle::crown:
            return {0, 0};
    }
    return {};
}

QRectF plan_area(const QRectF& widget) {
    QRectF area = widget;
    area.setWidth(std::min(widget.width(), widget.height() * widest_plan));
    area.moveCenter(widget.center());
    return area;
}

QRectF ring_box(const QRectF& widget) {
    const double side = ring_side * std::min(widget.height(), widget.width() * 0.9);
    QRectF box(0, 0, side, side);
    box.moveCenter(widget.center());
    return box;
}

// The crown is at least so wide, as long as the ring is.
QRect place_box(const QRectF& widget, Angle angle, double least_width) {
    if (angle == Angle::crown) {
        const double ring = ring_box(widget).width();
        const double side = ring * 0.62;
        QRectF box(0, 0, std::min(std::max(side * crown_side * 2, least_width), ring), side);
        box.moveCenter(widget.center());
        return box.toRect();
    }
    const QRectF area = plan_area(widget);
    const double height = std::min(place_height * area.height(), area.width() * 0.25 / place_shape);
    const QSizeF size(height * place_shape, height);
    const QPointF away = direction_of(angle);
    const QPointF middle(area.center().x() + away.x() * (area.width() - size.width()) / 2,
                         area.center().y() + away.y() * (area.height() - size.height()) / 2);
    QRectF box(QPointF(), size);
    box.moveCenter(middle);
    return box.toRect();
}

}  // namespace

HeadPlan::HeadPlan(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    for (const Angle angle : tab_order) add_place(angle);
    show_ring(ring_);
}

void HeadPlan::add_place(Angle angle) {
    auto* place = new PlanPlace(angle, this);
    connect(place, &PlanPlace::clicked, this, [this, angle] { emit chosen(angle); });
    connect(place, &PlanPlace::dropped, this,
            [this, angle](const std::vector<PhotoId>& photos) { emit dropped(angle, photos); });
    places_[angle] = place;
}

void HeadPlan::show_ring(const Ring& ring) {
    ring_ = ring;
    //: %1 says how each quarter stands
    setAccessibleName(tr("The head from above: %1").arg(coverage_sentence(ring)));
    update();
}

void HeadPlan::show_place(Angle angle, const PlanPlaceState& state) {
    places_.at(angle)->show_state(state);
}

void HeadPlan::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.strokePath(hair_strands(ring_box(rect())), QPen(hairline_colour(palette()), 1.5));
    draw_ring(painter, ring_box(rect()), ring_,
              {outline_colour(palette()), accent_colour(palette())});
}

void HeadPlan::resizeEvent(QResizeEvent*) {
    for (const auto& [angle, place] : places_) {
        place->setGeometry(place_box(rect(), angle, place->least_width()));
    }
}

void HeadPlan::mouseReleaseEvent(QMouseEvent* event) {
    if (const auto quarter = ring_quarter_at(ring_box(rect()), event->position())) {
        emit chosen(*quarter);
    }
}

}  // namespace quarterturn
