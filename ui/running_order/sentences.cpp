#include "ui/running_order/sentences.h"

#include <QAccessible>
#include <QPainterPath>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

Sentences::Sentences(QWidget* parent)
    : QWidget(parent), heading_(make_heading({})), well_(make_text({})), lines_(make_column(1)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    column->addWidget(heading_);
    column->addWidget(well_);
    column->addLayout(lines_);
}

void Sentences::show_consequences(const QString& heading, const Consequences& consequences) {
    heading_->setText(heading);
    QStringList sentences;
    for (const auto* part : {&consequences.lateness, &consequences.broken}) {
        for (const std::string& sentence : *part) sentences << from_utf8(sentence);
    }
    well_->setText(tr("Nobody is late, and every rule is kept."));
    well_->setVisible(sentences.isEmpty());
    while (labels_.size() < static_cast<std::size_t>(sentences.size())) {
        QLabel* label = make_text({});
        label->setContentsMargins(space(5), 0, 0, 0);
        lines_->addWidget(label);
        labels_.push_back(label);
    }
    for (std::size_t i = 0; i < labels_.size(); ++i) {
        labels_[i]->setText(sentences.value(static_cast<qsizetype>(i)));
        labels_[i]->setVisible(!labels_[i]->text().isEmpty());
    }
    setAccessibleName(heading + QLatin1Char(' ') +
                      (sentences.isEmpty() ? well_->text() : sentences.join(QLatin1Char(' '))));
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
    update();
}

void Sentences::show_heading(const QString& heading) {
    show_consequences(heading, {});
    well_->hide();
    setAccessibleName(heading);
}

QStringList Sentences::said() const {
    QStringList said;
    for (const QLabel* label : labels_) {
        if (!label->text().isEmpty()) said << label->text();
    }
    return said;
}

void Sentences::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const QLabel* label : labels_) {
        if (label->text().isEmpty()) continue;
        const double side = space(3);
        const QRect there = label->geometry();
        const double x = isRightToLeft() ? there.right() - side : there.left();
        const double y = there.top() + painter.fontMetrics().height() / 2.0 - side / 2;
        QPainterPath triangle;
        triangle.moveTo(x + side / 2, y);
        triangle.lineTo(x + side, y + side);
        triangle.lineTo(x, y + side);
        triangle.closeSubpath();
        painter.fillPath(triangle, accent_colour(palette()));
    }
}

}  // namespace quarterturn
