#include "ui/recipe/marked_button.h"

#include <QApplication>
#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int wrapped = Qt::TextWordWrap | Qt::AlignTop | Qt::AlignAbsolute;
constexpr int widest_line = 520;

QPolygonF triangle(const QPointF& middle, double size, double turned) {
    QPolygonF corners;
    for (const double degrees : {0.0, 120.0, 240.0}) {
        const double angle = qDegreesToRadians(degrees + turned);
        corners << middle + size * QPointF(std::cos(angle), std::sin(angle));
    }
    return corners;
}

void draw_mark(QPainter& painter, Mark mark, const QPointF& middle, double size, bool to_left) {
    switch (mark) {
        case Mark::folded:
            painter.setBrush(painter.pen().color());
            painter.drawPolygon(triangle(middle, size, to_left ? 180 : 0));
            break;
        case Mark::unfolded:
            painter.setBrush(painter.pen().color());
            painter.drawPolygon(triangle(middle, size, 90));
            break;
        case Mark::written:
            painter.setBrush(painter.pen().color());
            painter.drawEllipse(middle, size * 0.8, size * 0.8);
            break;
        case Mark::empty:
            painter.drawEllipse(middle, size * 0.8, size * 0.8);
            break;
        case Mark::bar:
            painter.setBrush(painter.pen().color());
            painter.drawEllipse(middle, size * 1.2, size * 1.2);
            painter.fillRect(
                QRectF(middle.x() - size * 0.8, middle.y() - size * 0.25, size * 1.6, size * 0.5),
                card_colour(qApp->palette()));
            break;
        case Mark::warning:
            painter.drawPolygon(triangle(middle + QPointF(0, size * 0.3), size * 1.3, -90));
            painter.drawPoint(middle + QPointF(0, size * 0.35));
            break;
    }
}

}  // namespace

MarkedButton::MarkedButton(Mark mark, const QString& text, QWidget* parent)
    : TextButton(text, parent), mark_(mark) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void MarkedButton::show_mark(Mark mark) {
    mark_ = mark;
    update();
}

void MarkedButton::show_text(const QString& text) {
    setText(text);
    updateGeometry();
}

int MarkedButton::mark_width() const {
    return fontMetrics().height() + space(1);
}

QRect MarkedButton::text_area(int width) const {
    const int room = std::max(width - mark_width() - space(1), 1);
    const QRect text = fontMetrics().boundingRect(QRect(0, 0, room, 10000), wrapped, this->text());
    const int x = isRightToLeft() ? space(1) : mark_width();
    return {x, std::max(space(1), (least_target - text.height()) / 2), room, text.height()};
}

QSize MarkedButton::sizeHint() const {
    const int whole = fontMetrics().horizontalAdvance(text()) + mark_width() + space(2);
    const int width = std::min(whole, widest_line);
    return {width, heightForWidth(width)};
}

QSize MarkedButton::minimumSizeHint() const {
    return {mark_width() + fontMetrics().averageCharWidth() * 16, least_target};
}

int MarkedButton::heightForWidth(int width) const {
    const QRect text = text_area(width);
    return std::max(least_target, text.height() + 2 * text.top());
}

void MarkedButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (underMouse()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(wash_colour(palette()));
        painter.drawRoundedRect(rect(), 6, 6);
    }
    const QRect area = text_area(width());
    const double line = fontMetrics().height();
    const double x = isRightToLeft() ? width() - line / 2 : line / 2;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(accent_colour(palette()), 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    draw_mark(painter, mark_, QPointF(x, area.top() + line / 2), line * 0.24, isRightToLeft());
    painter.setPen(ink_colour(palette()));
    // The text runs as its own script does, from the side where the layout starts.
    painter.setLayoutDirection(text().isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    painter.drawText(area, wrapped | (isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft), text());
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
