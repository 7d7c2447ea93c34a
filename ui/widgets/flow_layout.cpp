#include "ui/widgets/flow_layout.h"

#include <QWidget>

namespace quarterturn {

QSize FlowLayout::sizeHint() const {
    QSize size;
    for (const QLayoutItem* item : seen()) {
        const QSize hint = item->sizeHint();
        size = {size.width() + hint.width() + gap(), std::max(size.height(), hint.height())};
    }
    return size;
}

int FlowLayout::arrange(const QRect& area, bool move) const {
    int x = area.x();
    int y = area.y();
    int row_height = 0;
    for (QLayoutItem* item : seen()) {
        const QSize hint = item->sizeHint().boundedTo({area.width(), QWIDGETSIZE_MAX});
        if (x > area.x() && x + hint.width() > area.x() + area.width()) {
            x = area.x();
            y += row_height + gap();
            row_height = 0;
        }
        const int height = height_at(*item, hint.width());
        if (move) place(*item, area, {x, y, hint.width(), height});
        x += hint.width() + gap();
        row_height = std::max(row_height, height);
    }
    return y + row_height - area.y();
}

}  // namespace quarterturn
