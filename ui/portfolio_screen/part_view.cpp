#include "ui/portfolio_screen/part_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double key_step = 0.02;    // of a side
constexpr double least_side = 0.05;  // of a side
constexpr int left_out_alpha = 150;

QRectF inside_picture(const QRectF& part) {
    const QRectF box = part.normalized();
    const double width = std::clamp(box.width(), least_side, 1.0);
    const double height = std::clamp(box.height(), least_side, 1.0);
    return {std::clamp(box.x(), 0.0, 1 - width), std::clamp(box.y(), 0.0, 1 - height), width,
            height};
}

}  // namespace

PartView::PartView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(space(40), space(40));
}

QSize PartView::sizeHint() const {
    return {space(140), space(120)};
}

void PartView::show_picture(const QImage& picture, const QString& name) {
    picture_ = picture;
    asks_ = false;
    setFocusPolicy(Qt::NoFocus);
    unsetCursor();
    setAccessibleName(name);
    setAccessibleDescription({});
    update();
}

void PartView::ask_part(const QImage& picture, const QString& name, const QRectF& part) {
    show_picture(picture, name);
    asks_ = true;
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::CrossCursor);
    take_part(part);
}

void PartView::take_part(const QRectF& part) {
    part_ = inside_picture(part);
    const auto percent = [](double share) { return qRound(share * 100); };
    setAccessibleDescription(tr("A part %1 % wide and %2 % high, %3 % across, %4 % down")
                                 .arg(percent(part_.width()))
                                 .arg(percent(part_.height()))
                                 .arg(percent(part_.x()))
                                 .arg(percent(part_.y())));
    update();
}

QRectF PartView::picture_area() const {
    const QSizeF size = QSizeF(picture_.size()).scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
    return {QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size};
}

QPointF PartView::share_at(const QPointF& place) const {
    const QRectF area = picture_area();
    return {std::clamp((place.x() - area.x()) / area.width(), 0.0, 1.0),
            std::clamp((place.y() - area.y()) / area.height(), 0.0, 1.0)};
}

QRectF PartView::place_of_part() const {
    const QRectF area = picture_area();
    return {area.x() + part_.x() * area.width(), area.y() + part_.y() * area.height(),
            part_.width() * area.width(), part_.height() * area.height()};
}

void PartView::paintEvent(QPaintEvent* /*event*/) {
    if (picture_.isNull()) return;
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const QRectF area = picture_area();
    painter.drawImage(area, picture_);
    if (asks_) paint_part(painter, area);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

// What is outside the box is dimmed; its line is drawn in two colours, to be seen on any picture.
void PartView::paint_part(QPainter& painter, const QRectF& area) const {
    const QRectF box = place_of_part();
    QPainterPath outside;
    outside.addRect(area);
    outside.addRect(box);
    QColor dim = card_colour(palette());
    dim.setAlpha(left_out_alpha);
    painter.fillPath(outside, dim);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(card_colour(palette()), 5));
    painter.drawRect(box);
    painter.setPen(QPen(accent_colour(palette()), 2));
    painter.drawRect(box);
}

bool PartView::move_by_key(const QKeyEvent& event) {
    const bool size = event.modifiers() & Qt::ShiftModifier;
    const int across = (event.key() == Qt::Key_Right) - (event.key() == Qt::Key_Left);
    const int down = (event.key() == Qt::Key_Down) - (event.key() == Qt::Key_Up);
    if (across == 0 && down == 0) return false;
    const QPointF step(across * key_step, down * key_step);
    if (size) {
        take_part({part_.topLeft(), QSizeF(std::max(least_side, part_.width() + step.x()),
                                           std::max(least_side, part_.height() + step.y()))});
    } else {
        take_part(part_.translated(step));
    }
    return true;
}

void PartView::keyPressEvent(QKeyEvent* event) {
    if (!asks_ || !move_by_key(*event)) QWidget::keyPressEvent(event);
}

void PartView::mousePressEvent(QMouseEvent* event) {
    if (asks_) drawn_from_ = share_at(event->position());
}

void PartView::mouseMoveEvent(QMouseEvent* event) {
    if (!asks_ || !(event->buttons() & Qt::LeftButton)) return;
    take_part(QRectF(drawn_from_, share_at(event->position())));
}

}  // namespace quarterturn
