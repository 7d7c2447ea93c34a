#include "ui/shell/moment_button.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>

#include "ui/theme/theme.h"

namespace quarterturn {

MomentButton::MomentButton(const QString& title, Opens opens, QWidget* parent)
    : TextButton(title, parent), opens_(opens) {
    setCheckable(true);
}

QFont MomentButton::word_font() const {
    QFont font = text_font(TextRole::body);
    font.setBold(isChecked());
    return font;
}

int MomentButton::arrow_width() const {
    return opens_ == Opens::menu ? space(5) : 0;
}

QSize MomentButton::sizeHint() const {
    if (hint_.isValid()) return hint_;
    QFont bold = text_font(TextRole::body);
    bold.setBold(true);  // so that being chosen moves nothing
    const QFontMetrics metrics(bold);
    hint_ = {metrics.horizontalAdvance(text()) + space(4) + arrow_width(),
             std::max(metrics.height() + space(5), least_target)};
    return hint_;
}

void MomentButton::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) hint_ = {};
    TextButton::changeEvent(event);
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
    const QRect words =
        QStyle::visualRect(layoutDirection(), rect(), rect().adjusted(0, 0, -arrow_width(), 0));
    painter.drawText(words, Qt::AlignCenter, text());
    if (opens_ == Opens::menu) {
        const QRect arrow = rect().adjusted(width() - arrow_width() - space(2), 0, -space(2), 0);
        draw_chevron(painter, QStyle::visualRect(layoutDirection(), rect(), arrow),
                     ink_colour(palette()));
    }
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
