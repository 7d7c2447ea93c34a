#include "ui/kit_list/kit_row.h"

#include <QCheckBox>
#include <QMouseEvent>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

KitRow::KitRow(const KitLine& line, QWidget* parent)
    : QWidget(parent),
      box_(new QCheckBox),
      what_(make_text({})),
      about_(make_quiet({})),
      grown_(new Notice),
      growth_(build_growth()) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space(2), space(1), space(2), space(1));
    row->setSpacing(space(3));
    // Its mark stands in the middle of the first line.
    const int line_height = QFontMetrics(text_font(TextRole::body)).height() + 2 * space(1);
    box_->setMinimumSize(least_target, std::max(least_target, line_height));
    row->addWidget(box_, 0, Qt::AlignTop);
    QVBoxLayout* words = make_column(0);
    words->setContentsMargins(0, space(1), 0, space(1));
    words->addWidget(what_);
    words->addWidget(about_);
    words->addWidget(growth_);
    row->addLayout(words, 1);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    box_->installEventFilter(this);
    connect(box_, &QCheckBox::clicked, this, &KitRow::ticked);
    show_line(line);
}

QWidget* KitRow::build_growth() {
    auto* part = new QWidget;
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, space(1), 0, 0);
    QPushButton* also = make_quiet_button(tr("Packed that too"));
    connect(also, &QPushButton::clicked, this, [this] { emit ticked(true); });
    row->addWidget(grown_, 1);
    row->addWidget(also);
    return part;
}

void KitRow::show_line(const KitLine& line) {
    line_ = line;
    box_->setChecked(line.ticked.has_value());
    what_->setText(from_utf8(counted_text(line)));
    QFont font = text_font(TextRole::body);
    font.setBold(!line.ticked);
    what_->setFont(font);
    const QString below = from_utf8(about_text(line));
    about_->setText(below);
    about_->setVisible(!below.isEmpty());
    box_->setAccessibleName(what_->text());
    const QString grown = from_utf8(grown_text(line));
    growth_->setVisible(!grown.isEmpty());
    grown_->say(grown);
    for (QPushButton* also : growth_->findChildren<QPushButton*>()) {
        also->setAccessibleName(tr("Packed that too: %1").arg(what_->text()));
    }
    box_->setAccessibleDescription(grown.isEmpty() ? below : grown + QLatin1Char(' ') + below);
}

void KitRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (underMouse()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(wash_colour(palette()));
        painter.drawRoundedRect(rect(), 8, 8);
    }
    if (box_->hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void KitRow::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !rect().contains(event->pos())) return;
    box_->setFocus(Qt::MouseFocusReason);
    box_->click();
}

bool KitRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) update();
    return QWidget::eventFilter(watched, event);
}

}  // namespace quarterturn
