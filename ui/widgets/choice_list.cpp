#include "ui/widgets/choice_list.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QScreen>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int long_list = 12;   // entries
constexpr int most_shown = 10;  // at once

}  // namespace

ChoiceList::ChoiceList(const QString& name, const QStringList& entries, QWidget* parent)
    : QFrame(parent, Qt::Popup), part_(new QLineEdit), list_(new QListWidget) {
    setAttribute(Qt::WA_DeleteOnClose);
    setProperty("kind", QStringLiteral("choices"));
    setAccessibleName(name);
    part_->setPlaceholderText(tr("Part of the name"));
    part_->setAccessibleName(tr("Part of the name"));
    part_->setVisible(entries.size() > long_list);
    part_->installEventFilter(this);
    list_->setAccessibleName(name);
    list_->setFrameShape(NoFrame);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setUniformItemSizes(true);
    for (const QString& entry : entries) {
        auto* item = new QListWidgetItem(entry, list_);
        item->setSizeHint({0, std::max(list_->fontMetrics().height() + space(2), least_target)});
    }
    list_->setCurrentRow(0);
    connect(list_, &QListWidget::itemClicked, this, &ChoiceList::choose);
    connect(list_, &QListWidget::itemActivated, this, &ChoiceList::choose);
    connect(part_, &QLineEdit::textChanged, this, &ChoiceList::narrow);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(2), space(2), space(2), space(2));
    column->addWidget(part_);
    column->addWidget(list_);
    const int rows = static_cast<int>(std::min<qsizetype>(entries.size(), most_shown));
    const int row = std::max(list_->fontMetrics().height() + space(2), least_target);
    list_->setFixedHeight(rows * row + 4);
    list_->setFixedWidth(std::clamp(list_->sizeHintForColumn(0) + space(8), space(45), space(110)));
}

void ChoiceList::open_below(const QWidget& button) {
    place_below(*this, button);
    show();
    (part_->isVisible() ? static_cast<QWidget*>(part_) : list_)->setFocus();
}

void ChoiceList::narrow(const QString& part) {
    QListWidgetItem* first = nullptr;
    for (int i = 0; i < list_->count(); ++i) {
        QListWidgetItem* item = list_->item(i);
        item->setHidden(!item->text().contains(part.trimmed(), Qt::CaseInsensitive));
        if (!first && !item->isHidden()) first = item;
    }
    list_->setCurrentItem(first);
}

void ChoiceList::choose() {
    const QListWidgetItem* item = list_->currentItem();
    if (!item || item->isHidden() || !isVisible()) return;
    const int entry = list_->currentRow();
    close();
    emit chosen(entry);
}

bool ChoiceList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == part_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            choose();
            return true;
        }
        if (key == Qt::Key_Down) {
            list_->setFocus();
            return true;
        }
    }
    return QFrame::eventFilter(watched, event);
}

void place_below(QWidget& popup, const QWidget& button) {
    popup.adjustSize();
    QRect area(button.mapToGlobal(QPoint(0, button.height() + 4)), popup.size());
    if (button.isRightToLeft()) area.moveRight(button.mapToGlobal(QPoint(button.width(), 0)).x());
    const QRect screen = button.screen()->availableGeometry();
    area.moveRight(std::min(area.right(), screen.right()));
    area.moveBottom(std::min(area.bottom(), screen.bottom()));
    area.moveLeft(std::max(area.left(), screen.left()));
    popup.move(area.topLeft());
}

}  // namespace quarterturn
