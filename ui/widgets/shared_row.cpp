#include "ui/widgets/shared_row.h"

#include <QStyle>
#include <QWidget>
#include <algorithm>
#include <numeric>

namespace quarterturn {
namespace {

int height_at(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

}  // namespace

SharedRow::SharedRow(int gap, QWidget* parent) : QLayout(parent), gap_(gap) {
    setContentsMargins(0, 0, 0, 0);
}

SharedRow::~SharedRow() = default;

void SharedRow::add(QWidget* part, int share) {
    addWidget(part);
    parts_.back().share = share;
}

void SharedRow::addItem(QLayoutItem* item) {
    parts_.push_back({std::unique_ptr<QLayoutItem>(item)});
}

QLayoutItem* SharedRow::itemAt(int index) const {
    return index >= 0 && index < count() ? parts_[static_cast<std::size_t>(index)].item.get()
                                         : nullptr;
}

QLayoutItem* SharedRow::takeAt(int index) {
    if (!itemAt(index)) return nullptr;
    QLayoutItem* item = parts_[static_cast<std::size_t>(index)].item.release();
    parts_.erase(parts_.begin() + index);
    return item;
}

std::vector<QLayoutItem*> SharedRow::seen() const {
    std::vector<QLayoutItem*> seen;
    for (const Part& part : parts_) {
        if (!part.item->isEmpty()) seen.push_back(part.item.get());
    }
    return seen;
}

// Whoever needs more than its share gets it, and the others share what is left.
std::vector<int> SharedRow::widths_in(int width) const {
    std::vector<int> shares;
    std::vector<int> needed;
    for (const Part& part : parts_) {
        if (part.item->isEmpty()) continue;
        shares.push_back(part.share);
        needed.push_back(part.item->minimumSize().width());
    }
    int left = width - gap_ * std::max(static_cast<int>(shares.size()) - 1, 0);
    if (std::accumulate(needed.begin(), needed.end(), 0) > left) return {};
    int sharing = std::accumulate(shares.begin(), shares.end(), 0);
    std::vector<int> widths(shares.size(), -1);
    for (std::size_t i = 0; i < shares.size();) {
        if (widths[i] >= 0 || needed[i] * sharing <= left * shares[i]) {
            ++i;
            continue;
        }
        widths[i] = needed[i];
        left -= needed[i];
        sharing -= shares[i];
        i = 0;  // the others have less now
    }
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (widths[i] < 0) widths[i] = left * shares[i] / sharing;
    }
    return widths;
}

int SharedRow::heightForWidth(int width) const {
    return arrange({0, 0, width, 0}, false);
}

QSize SharedRow::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : seen()) size = size.expandedTo(item->minimumSize());
    return size;
}

QSize SharedRow::sizeHint() const {
    QSize size;
    for (const QLayoutItem* item : seen()) {
        const QSize hint = item->sizeHint();
        const int gap = size.width() > 0 ? gap_ : 0;
        size = {size.width() + gap + hint.width(), std::max(size.height(), hint.height())};
    }
    return size;
}

void SharedRow::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    arrange(area, true);
}

int SharedRow::arrange(const QRect& area, bool move) const {
    const auto direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
    const std::vector<QLayoutItem*> items = seen();
    const std::vector<int> widths = widths_in(area.width());
    const auto place = [&](QLayoutItem& item, const QRect& at) {
        if (move) item.setGeometry(QStyle::visualRect(direction, area, at));
    };
    int x = area.x();
    int y = area.y();
    if (widths.empty()) {
        for (QLayoutItem* item : items) {
            const int height = height_at(*item, area.width());
            place(*item, {x, y, area.width(), height});
            y += height + gap_;
        }
        return items.empty() ? 0 : y - gap_ - area.y();
    }
    int height = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        height = std::max(height, height_at(*items[i], widths[i]));
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
        place(*items[i], {x, y, widths[i], height});
        x += widths[i] + gap_;
    }
    return height;
}

}  // namespace quarterturn
