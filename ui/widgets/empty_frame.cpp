#include "ui/widgets/empty_frame.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {

EmptyFrame::EmptyFrame(QSize size, const QString& words, QWidget* parent) : QLabel(words, parent) {
    setFixedSize(size);
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setAlignment(Qt::AlignCenter);
    setMargin(space(1));
}

void EmptyFrame::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(outline_colour(palette()), 1.5, Qt::DashLine));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 8, 8);
    painter.end();
    QLabel::paintEvent(event);
}

}  // namespace quarterturn
