// The words below the two photos, and where there is none.

#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/two_heads/pair_view.h"

namespace quarterturn {
namespace {

constexpr double frame_corner = 8;

}  // namespace

QString PairView::caption(int side) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    if (!shown.mirrored) return shown.when;
    return shown.when + QLatin1Char('\n') + tr("Taken in a mirror; shown the right way round.");
}

// Of the longer one, in the lines it takes.
double PairView::caption_height() const {
    const QFontMetricsF metrics(text_font(TextRole::body));
    double height = 0;
    for (const int side : {0, 1}) {
        const QRectF room(0, 0, half(side).width(), QWIDGETSIZE_MAX);
        height =
            std::max(height, metrics.boundingRect(room, Qt::TextWordWrap, caption(side)).height());
    }
    return metrics.lineSpacing() + height + space(2);
}

// In an empty cell.
void PairView::paint_missing(QPainter& painter, const QString& words, const QRectF& cell) const {
    painter.setPen(QPen(outline_colour(palette()), 2.5, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(cell.adjusted(1.5, 1.5, -1.5, -1.5), frame_corner, frame_corner);
    painter.setFont(text_font(TextRole::body));
    painter.setPen(ink_colour(palette()));
    const double margin = space(6);
    painter.drawText(cell.adjusted(margin, margin, -margin, -margin),
                     Qt::AlignCenter | Qt::TextWordWrap, words);
}

void PairView::paint_caption(QPainter& painter, int side, double bottom, const QRectF& room,
                             Qt::Alignment to) const {
    QFont font = text_font(TextRole::body);
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(ink_colour(palette()));
    const double line = QFontMetricsF(font).lineSpacing();
    const QRectF first(room.x(), bottom + space(1), room.width(), line);
    painter.drawText(first, static_cast<int>(to), sides_[static_cast<std::size_t>(side)].which);
    painter.setFont(text_font(TextRole::body));
    painter.setPen(quiet_colour(palette()));
    const QRectF below(room.x(), first.bottom(), room.width(), caption_height());
    painter.drawText(below, static_cast<int>(to) | Qt::TextWordWrap, caption(side));
}

QString PairView::said(int side) const {
    const PairSide& shown = sides_[static_cast<std::size_t>(side)];
    return shown.missing.isEmpty() ? caption(side).replace(QLatin1Char('\n'), QLatin1String(". "))
                                   : shown.missing;
}

}  // namespace quarterturn
