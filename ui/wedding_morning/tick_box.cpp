#include "ui/wedding_morning/tick_box.h"

#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"

namespace quarterturn {

TickBox::TickBox(int number, const BoardType& type, QWidget* parent)
    : TextButton({}, parent), number_(QString::number(number)) {
    setCheckable(true);
    setFont(type.font(BoardRole::heading));
    setFixedSize(type.target(), type.target());
}

void TickBox::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(4, 4, -4, -4);
    painter.setPen(QPen(isChecked() ? accent_colour(palette()) : outline_colour(palette()), 2.5));
    painter.setBrush(isChecked()    ? accent_colour(palette())
                     : underMouse() ? wash_colour(palette())
                                    : card_colour(palette()));
    painter.drawRoundedRect(box, 8, 8);
    if (isChecked()) {
        QPainterPath tick(box.topLeft() + QPointF(box.width() * 0.24, box.height() * 0.52));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.43, box.height() * 0.72));
        tick.lineTo(box.topLeft() + QPointF(box.width() * 0.77, box.height() * 0.3));
        painter.strokePath(tick, QPen(on_accent_colour(palette()), box.width() * 0.11,
                                      Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    } else {
        painter.setPen(ink_colour(palette()));
        painter.setFont(font());
        painter.drawText(box, Qt::AlignCenter, number_);
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
