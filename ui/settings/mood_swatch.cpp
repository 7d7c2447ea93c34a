#include "ui/settings/mood_swatch.h"

#include <QPainter>

namespace quarterturn {

MoodSwatch::MoodSwatch(Mood mood, QWidget* parent) : QWidget(parent), mood_(mood) {
    setFixedSize(space(24), space(15));
}

void MoodSwatch::paintEvent(QPaintEvent*) {
    const QPalette colours = make_palette(mood_);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(outline_colour(palette()), 1));
    painter.setBrush(page_colour(colours));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
    painter.setPen(Qt::NoPen);
    painter.setBrush(card_colour(colours));
    const QRectF card = QRectF(rect()).adjusted(space(2), space(2), -space(2), -space(2));
    painter.drawRoundedRect(card, 5, 5);
    const double line = card.height() / 6;
    const auto bar = [&](const QColor& colour, int place, double part) {
        QRectF area(card.left() + line, card.top() + line * place, (card.width() - 2 * line) * part,
                    line * 0.7);
        if (isRightToLeft()) area.moveRight(card.right() - line);
        painter.setBrush(colour);
        painter.drawRoundedRect(area, 2, 2);
    };
    bar(ink_colour(colours), 1, 0.9);
    bar(quiet_colour(colours), 2, 0.7);
    bar(accent_colour(colours), 4, 0.45);
}

}  // namespace quarterturn
