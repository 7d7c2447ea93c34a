#include "ui/two_heads/point_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double short_step = 0.0025;  // of the picture's height
constexpr double long_step = 0.02;
constexpr double ring = morning_target / 2.0;

}  // namespace

PointView::PointView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(space(30), space(30));
}

QSize PointView::sizeHint() const {
    return {space(90), space(120)};
}

void PointView::show_picture(const QImage& picture, bool mirrored) {
    picture_ = picture.mirrored(mirrored, false);
    update();
}

void PointView::show_points(const HeadPoints& points) {
    points_ = points;
    tell_state();
    update();
}

void PointView::set_names(const QString& photo, const QString& bottom) {
    photo_ = photo;
    bottom_ = bottom;
    tell_state();
}

void PointView::tell_state() {
    setAccessibleName(tr("%1: where the head stands").arg(photo_));
    const PicturePoint& point = lower_ ? points_.bottom : points_.top;
    //: "top of the hair" or "chin", and where it stands
    setAccessibleDescription(tr("%1: %2 % across, %3 % down")
                                 .arg(lower_ ? bottom_ : tr("top of the hair"))
                                 .arg(qRound(point.x * 100))
                                 .arg(qRound(point.y * 100)));
}

QRectF PointView::picture_area() const {
    const QSizeF whole = picture_.isNull() ? QSizeF(3, 4) : QSizeF(picture_.size());
    const QSizeF size = whole.scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
    return {QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size};
}

QPointF PointView::place_of(const PicturePoint& point) const {
    const QRectF area = picture_area();
    return {area.x() + point.x * area.width(), area.y() + point.y * area.height()};
}

void PointView::move_to(const QPointF& place) {
    const QRectF area = picture_area();
    in_hand() = {std::clamp((place.x() - area.x()) / area.width(), 0.0, 1.0),
                 std::clamp((place.y() - area.y()) / area.height(), 0.0, 1.0)};
    tell_state();
    update();
    emit moved();
}

void PointView::move_by(double right, double down) {
    const double height = picture_area().height();
    move_to(place_of(in_hand()) + QPointF(right * height, down * height));
}

void PointView::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF area = picture_area();
    painter.fillRect(area, card_colour(palette()));
    if (!picture_.isNull()) painter.drawImage(area, picture_);
    painter.setPen(QPen(card_colour(palette()), 4));
    painter.drawLine(place_of(points_.top), place_of(points_.bottom));
    painter.setPen(QPen(accent_colour(palette()), 2, Qt::DashLine));
    painter.drawLine(place_of(points_.top), place_of(points_.bottom));
    paint_point(painter, points_.top, tr("top of the hair"), !lower_);
    paint_point(painter, points_.bottom, bottom_, lower_);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void PointView::paint_point(QPainter& painter, const PicturePoint& point, const QString& name,
                            bool current) const {
    const QPointF place = place_of(point);
    painter.setBrush(Qt::NoBrush);
    for (const auto& [colour, width] :
         {std::pair(card_colour(palette()), 6), std::pair(accent_colour(palette()), 3)}) {
        painter.setPen(QPen(colour, width));
        painter.drawEllipse(place, ring, ring);
        painter.drawLine(place - QPointF(6, 0), place + QPointF(6, 0));
        painter.drawLine(place - QPointF(0, 6), place + QPointF(0, 6));
    }
    QFont font = text_font(TextRole::body);
    font.setBold(current);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    QRectF words(0, 0, metrics.horizontalAdvance(name) + space(4), metrics.height() + space(1));
    words.moveCenter(place + QPointF(0, ring + words.height()));
    words.moveLeft(std::clamp(words.x(), 0.0, std::max(0.0, width() - words.width())));
    painter.setPen(Qt::NoPen);
    painter.setBrush(card_colour(palette()));
    painter.drawRoundedRect(words, 4, 4);
    painter.setPen(ink_colour(palette()));
    painter.drawText(words, Qt::AlignCenter, name);
}

void PointView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? long_step : short_step;
    switch (event->key()) {
        case Qt::Key_Space:
            lower_ = !lower_;
            tell_state();
            return update();
        case Qt::Key_Left:
            return move_by(-step, 0);
        case Qt::Key_Right:
            return move_by(step, 0);
        case Qt::Key_Up:
            return move_by(0, -step);
        case Qt::Key_Down:
            return move_by(0, step);
        default:
            QWidget::keyPressEvent(event);
    }
}

void PointView::mousePressEvent(QMouseEvent* event) {
    const auto away = [&](const PicturePoint& point) {
        return QLineF(place_of(point), event->position()).length();
    };
    lower_ = away(points_.bottom) < away(points_.top);
    move_to(event->position());
}

void PointView::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) move_to(event->position());
}

}  // namespace quarterturn
