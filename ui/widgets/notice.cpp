#include "ui/widgets/notice.h"

#include <QAccessible>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

Notice::Notice(QWidget* parent) : QFrame(parent), text_(make_text({})) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space(6), space(2), space(3), space(2));
    row->addWidget(text_);
    setVisible(false);
}

void Notice::say(const QString& sentence) {
    text_->setText(sentence);
    setAccessibleName(sentence);
    setVisible(!sentence.isEmpty());
    if (sentence.isEmpty()) return;
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

QString Notice::said() const {
    return text_->text();
}

void Notice::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(wash_colour(palette()));
    painter.drawRoundedRect(rect(), 8, 8);
    const int thick = space(1);
    const int x = isRightToLeft() ? width() - space(2) - thick : space(2);
    painter.setBrush(accent_colour(palette()));
    painter.drawRoundedRect(x, space(2), thick, height() - space(4), 2, 2);
}

// It speaks once it has its place: before, it would show as a window of its own.
void add_notice(QBoxLayout& column, const QString& sentence) {
    auto* notice = new Notice;
    column.addWidget(notice);
    notice->say(sentence);
}

}  // namespace quarterturn
