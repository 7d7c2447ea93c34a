#include "ui/shell/moment_button.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {

MomentButton::MomentButton(const QString& title, QWidget* parent) : TextButton(title, parent) {
    setCheckable(true);
}

QFont MomentButton::word_font() const {
    QFont font = text_font(TextRole::body);
    font.setBold(isChecked());
    return font;
}

QSize MomentButton::sizeHint() const {
    QFont bold = text_font(TextRole::body);
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    return {metrics.horizontalAdvance(text()) + space(4),
            std::max(metrics.height() + space(5), least_target)};
}

void MomentButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    if (underMouse()) {
        painter.setBrush(wash_colour(palette()));
        painter.drawRoundedRect(rect().adjusted(2, 2, -2, -2), 8, 8);
    }
    if (isChecked()) {
        painter.setBrush(accent_colour(palette()));
        painter.drawRoundedRect(space(2), height() - 5, width() - space(4), 4, 2, 2);
    }
    painter.setFont(word_font());
    painter.setPen(ink_colour(palette()));
    painter.drawText(rect(), Qt::AlignCenter, text());
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
