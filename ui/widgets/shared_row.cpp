#include "ui/widgets/shared_row.h"

#include <QWidget>
#include <algorithm>
#include <numeric>

namespace quarterturn {
namespace {

int share_of(const QLayoutItem& item) {
    const QWidget* part = item.widget();
    return std::max(part ? part->sizePolicy().horizontalStretch() : 1, 1);
}

}  // namespace

void SharedRow::add(QWidget* part, int share) {
    QSizePolicy policy = part->sizePolicy();
    policy.setHorizontalStretch(share);
    part->setSizePolicy(policy);
    addWidget(part);
}

// Whoever needs more than its share gets it, and the others share what is left.
std::vector<int> SharedRow::widths_in(int width) const {
    std::vector<int> shares;
    std::vector<int> needed;
    for (const QLayoutItem* item : seen()) {
        shares.push_back(share_of(*item));
        needed.push_back(item->minimumSize().width());
    }
    int left = width - gap() * std::max(static_cast<int>(shares.size()) - 1, 0);
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

QSize SharedRow::sizeHint() const {
    QSize size;
    for (const QLayoutItem* item : seen()) {
        const QSize hint = item->sizeHint();
        const int between = size.width() > 0 ? gap() : 0;
        size = {size.width() + between + hint.width(), std::max(size.height(), hint.height())};
    }
    return size;
}

int SharedRow::arrange(const QRect& area, bool move) const {
    const std::vector<QLayoutItem*> items = seen();
    const std::vector<int> widths = widths_in(area.width());
    int x = area.x();
    int y = area.y();
    if (widths.empty()) {
        for (QLayoutItem* item : items) {
            const int height = height_at(*item, area.width());
            if (move) place(*item, area, {x, y, area.width(), height});
            y += height + gap();
        }
        return items.empty() ? 0 : y - gap() - area.y();
    }
    int height = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        height = std::max(height, height_at(*items[i], widths[i]));
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (move) place(*items[i], area, {x, y, widths[i], height});
        x += widths[i] + gap();
    }
    return height;
}

}  // namespace quarterturn
