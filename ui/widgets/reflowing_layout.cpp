#include "ui/widgets/reflowing_layout.h"

#include <QStyle>
#include <QWidget>

namespace quarterturn {

ReflowingLayout::ReflowingLayout(int gap, QWidget* parent) : QLayout(parent), gap_(gap) {
    setContentsMargins(0, 0, 0, 0);
}

ReflowingLayout::~ReflowingLayout() = default;

void ReflowingLayout::addItem(QLayoutItem* item) {
    items_.emplace_back(item);
}

QLayoutItem* ReflowingLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* ReflowingLayout::takeAt(int index) {
    if (!itemAt(index)) return nullptr;
    QLayoutItem* item = items_[static_cast<std::size_t>(index)].release();
    items_.erase(items_.begin() + index);
    return item;
}

std::vector<QLayoutItem*> ReflowingLayout::seen() const {
    std::vector<QLayoutItem*> seen;
    for (const auto& item : items_) {
        if (!item->isEmpty()) seen.push_back(item.get());
    }
    return seen;
}

int ReflowingLayout::heightForWidth(int width) const {
    return arrange({0, 0, width, 0}, false);
}

QSize ReflowingLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : seen()) size = size.expandedTo(item->minimumSize());
    return size;
}

void ReflowingLayout::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    arrange(area, true);
}

void ReflowingLayout::place(QLayoutItem& item, const QRect& area, const QRect& at) const {
    const auto direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    item.setGeometry(QStyle::visualRect(direction, area, at));
}

int height_at(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

}  // namespace quarterturn
