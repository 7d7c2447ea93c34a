#include "ui/recipe/spot_field.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "ui/drawing_board/drawing_colours.h"
#include "ui/drawing_board/drawing_words.h"

namespace quarterturn {
namespace {

constexpr int spot_steps = 30;
constexpr double arrow_way = 0.1;

// Within the head, whose edge is a circle round 0, 0 in the plan's own measure.
PlanPoint on_the_head(double x, double y) {
    const double far = std::hypot(x, y);
    return far > 1 ? PlanPoint{x / far, y / far} : PlanPoint{x, y};
}

QRectF head_box(const QWidget& field) {
    return QRectF(field.rect()).adjusted(4, 4, -4, -4);
}

}  // namespace

SpotField::SpotField(QWidget* parent) : Field(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setFixedSize(space(spot_steps), space(spot_steps));
    setCursor(Qt::CrossCursor);
}

void SpotField::name_it(const QString& name) {
    name_ = name;
    tell();
}

void SpotField::tell() {
    //: what is asked for, and where on the head it is
    setAccessibleName(tr("%1: %2").arg(name_, spot_ ? place_words(*spot_) : tr("no place yet")));
    setToolTip(tr("Click or use the arrow keys; Delete takes it away."));
}

void SpotField::show_value(std::optional<PlanPoint> spot) {
    spot_ = spot;
    tell();
    update();
}

void SpotField::put(std::optional<PlanPoint> spot) {
    if (spot == spot_) return;
    show_value(spot);
    emit changed();
}

void SpotField::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    HeadDrawing drawing;
    if (spot_) drawing.marks.push_back({1, *spot_, {}});
    draw_head_drawing(painter, head_box(*this), drawing, drawing_colours(palette()));
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void SpotField::mousePressEvent(QMouseEvent* event) {
    const PlanPoint at = on_head_plan(head_box(*this), event->position());
    put(on_the_head(at.x, at.y));
}

void SpotField::keyPressEvent(QKeyEvent* event) {
    const PlanPoint from = spot_.value_or(PlanPoint{});
    const bool plain = event->modifiers() == Qt::NoModifier;
    switch (plain ? event->key() : 0) {
        case Qt::Key_Left:
            return put(on_the_head(from.x - arrow_way, from.y));
        case Qt::Key_Right:
            return put(on_the_head(from.x + arrow_way, from.y));
        case Qt::Key_Up:
            return put(on_the_head(from.x, from.y - arrow_way));
        case Qt::Key_Down:
            return put(on_the_head(from.x, from.y + arrow_way));
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            return put(std::nullopt);
        default:
            Field::keyPressEvent(event);
    }
}

}  // namespace quarterturn
