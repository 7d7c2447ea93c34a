#include "ui/widgets/flow_layout.h"

#include <QStyle>
#include <QWidget>

namespace quarterturn {

FlowLayout::FlowLayout(int gap, QWidget* parent) : QLayout(parent), gap_(gap) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (QLayoutItem* item : items_) delete item;
}

void FlowLayout::addItem(QLayoutItem* item) {
    items_.push_back(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item) items_.erase(items_.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const {
    return arrange({0, 0, width, 0}, false);
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
    return size;
}

QSize FlowLayout::sizeHint() const {
    QSize size;
    for (const QLayoutItem* item : items_) {
        const QSize hint = item->sizeHint();
        size = {size.width() + hint.width() + gap_, std::max(size.height(), hint.height())};
    }
    return size;
}

void FlowLayout::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    arrange(area, true);
}

int FlowLayout::arrange(const QRect& area, bool move) const {
    const auto direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    int x = area.x();
    int y = area.y();
    int row_height = 0;
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        const QSize hint = item->sizeHint().boundedTo({area.width(), QWIDGETSIZE_MAX});
        if (x > area.x() && x + hint.width() > area.x() + area.width()) {
            x = area.x();
            y += row_height + gap_;
            row_height = 0;
        }
        const int height =
            item->hasHeightForWidth() ? item->heightForWidth(hint.width()) : hint.height();
        const QRect place(x, y, hint.width(), height);
        if (move) item->setGeometry(QStyle::visualRect(direction, area, place));
        x += hint.width() + gap_;
        row_height = std::max(row_height, height);
    }
    return y + row_height - area.y();
}

}  // namespace quarterturn
