#include "ui/round_the_head/photo_pane.h"

#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double nearest = 8;
constexpr double step = 1.25;
constexpr double key_move = 0.15;    // of the pane
constexpr double wheel_notch = 120;  // QWheelEvent::angleDelta

}  // namespace

PhotoPane::PhotoPane(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(120, 120);
    setCursor(Qt::OpenHandCursor);
}

void PhotoPane::show_photo(const QImage& picture, QSize full, bool mirrored) {
    picture_ = picture;
    full_ = full.isEmpty() ? picture.size() : full;
    mirrored_ = mirrored;
    update();
}

void PhotoPane::look(const Closeness& closeness) {
    closeness_ = closeness;
    update();
}

double PhotoPane::whole_scale() const {
    if (full_.isEmpty()) return 1;
    const double ratio = devicePixelRatioF();
    return std::min(width() * ratio / full_.width(), height() * ratio / full_.height());
}

double PhotoPane::scale() const {
    return closeness_.scale > 0 ? closeness_.scale : whole_scale();
}

void PhotoPane::use(Closeness closeness) {
    if (closeness.scale <= whole_scale()) closeness = {};
    closeness.scale = std::min(closeness.scale, nearest);
    closeness.middle.setX(std::clamp(closeness.middle.x(), 0.0, 1.0));
    closeness.middle.setY(std::clamp(closeness.middle.y(), 0.0, 1.0));
    look(closeness);
    emit looked(closeness_);
}

void PhotoPane::nearer(double times) {
    use({closeness_.middle, scale() * times});
}

void PhotoPane::move_by(const QPointF& pixels) {
    if (closeness_.scale <= 0 || full_.isEmpty()) return;
    const double shown = scale() / devicePixelRatioF();
    use({closeness_.middle +
             QPointF(pixels.x() / (full_.width() * shown), pixels.y() / (full_.height() * shown)),
         closeness_.scale});
}

void PhotoPane::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), card_colour(palette()));
    if (!picture_.isNull()) {
        const double shown = scale() / devicePixelRatioF();
        const QSizeF size = QSizeF(full_) * shown;
        const QPointF corner(width() / 2.0 - closeness_.middle.x() * size.width(),
                             height() / 2.0 - closeness_.middle.y() * size.height());
        // Beyond its own pixels a photo shows them as they are.
        painter.setRenderHint(QPainter::SmoothPixmapTransform, scale() <= 1);
        const QRectF area(corner, size);
        if (mirrored_) {
            painter.translate(2 * area.center().x(), 0);
            painter.scale(-1, 1);
        }
        painter.drawImage(area, picture_);
        painter.resetTransform();
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void PhotoPane::mousePressEvent(QMouseEvent* event) {
    pressed_at_ = event->position();
}

void PhotoPane::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return;
    move_by(pressed_at_ - event->position());
    pressed_at_ = event->position();
}

void PhotoPane::wheelEvent(QWheelEvent* event) {
    nearer(std::pow(step, event->angleDelta().y() / wheel_notch));
    event->accept();
}

void PhotoPane::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return move_by({-width() * key_move, 0});
        case Qt::Key_Right:
            return move_by({width() * key_move, 0});
        case Qt::Key_Up:
            return move_by({0, -height() * key_move});
        case Qt::Key_Down:
            return move_by({0, height() * key_move});
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return nearer(step);
        case Qt::Key_Minus:
            return nearer(1 / step);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace quarterturn
