// Where the two photos differ, drawn upon that of the day.

#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/two_heads/pair_view.h"

namespace quarterturn {

// Two short lines over the head: how high the hair stood at the trial, dashed, and stands now.
void PairView::paint_hint(QPainter& painter, const QRectF& cell) const {
    const Box window = window_of(*laid_, cell.width() / cell.height());
    const double scale = cell.height() / window.height;
    const double half = cell.width() / 6;
    for (const auto& [top, style] : {std::pair(laid_->hair.first_top, Qt::DashLine),
                                     std::pair(laid_->hair.second_top, Qt::SolidLine)}) {
        const QPointF middle(cell.x() + (laid_->hair.second_top.x - window.x) * scale,
                             cell.y() + (top.y - window.y) * scale);
        const QLineF line(middle - QPointF(half, 0), middle + QPointF(half, 0));
        painter.setPen(QPen(card_colour(palette()), 5));
        painter.drawLine(line);
        painter.setPen(QPen(accent_colour(palette()), 2.5, style));
        painter.drawLine(line);
    }
}

// Two rings joined by a line: where the accessory sat at the trial, dashed, and sits now.
void PairView::paint_move(QPainter& painter, const QRectF& cell) const {
    const Box window = window_of(*laid_, cell.width() / cell.height());
    const double scale = cell.height() / window.height;
    const double ring = cell.width() / 40;
    const auto in_cell = [&](const Spot& spot) {
        return cell.topLeft() + QPointF(spot.x - window.x, spot.y - window.y) * scale;
    };
    const QPointF was = in_cell(*laid_->accessory.first);
    const QPointF is = in_cell(*laid_->accessory.second);
    painter.setBrush(Qt::NoBrush);
    for (const bool under : {true, false}) {
        const QColor colour = under ? card_colour(palette()) : accent_colour(palette());
        const double width = under ? 5 : 2.5;
        painter.setPen(QPen(colour, width, under ? Qt::SolidLine : Qt::DashLine));
        painter.drawEllipse(was, ring, ring);
        painter.setPen(QPen(colour, width));
        painter.drawEllipse(is, ring, ring);
        QLineF between(was, is);
        if (between.length() <= 2 * ring) continue;
        const double share = ring / between.length();
        painter.drawLine(between.pointAt(share), between.pointAt(1 - share));
    }
}

}  // namespace quarterturn
