#include <QPainter>

#include "indexer/rules/drawing_on_head.h"
#include "ui/drawing_board/drawing_colours.h"
#include "ui/drawing_board/head_canvas.h"
#include "ui/theme/theme.h"
#include "ui/widgets/hair.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double crosshair_half = 14;  // px
constexpr double crosshair_hole = 4;
constexpr double handle_half = 4;

}  // namespace

HeadDrawing HeadCanvas::with_open_line() const {
    HeadDrawing drawing = drawing_;
    if (trail_.size() > 1) drawing.strokes.push_back({kind(), trail_});
    if (!points_.empty()) {
        drawing.strokes.push_back({kind(), points_});
        if (points_.back() != crosshair_) drawing.strokes.back().points.push_back(crosshair_);
    }
    return drawing;
}

void HeadCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw_ground(painter);
    draw_names(painter);
    draw_head_drawing(painter, head_box(), with_open_line(), drawing_colours(palette()));
    if (chosen_) draw_chosen(painter);
    if (hasFocus() && by_keys_ && !chosen_) draw_crosshair(painter);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void HeadCanvas::draw_ground(QPainter& painter) const {
    painter.setPen(QPen(outline_colour(palette()), 1));
    painter.setBrush(card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 10, 10);
    painter.strokePath(hair_strands(head_ring_box(head_box())),
                       QPen(hairline_colour(palette()), 1.2));
}

void HeadCanvas::draw_names(QPainter& painter) const {
    const QRect inside = rect().adjusted(space(2), space(1), -space(2), -space(1));
    painter.setFont(text_font(TextRole::small));
    painter.setPen(quiet_colour(palette()));
    painter.drawText(inside, Qt::AlignHCenter | Qt::AlignTop, shown(Angle::front));
    painter.drawText(inside, Qt::AlignHCenter | Qt::AlignBottom, shown(Angle::back));
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter,
                     shown(Angle::left));
    painter.drawText(inside, Qt::AlignRight | Qt::AlignAbsolute | Qt::AlignVCenter,
                     shown(Angle::right));
}

void HeadCanvas::draw_chosen(QPainter& painter) const {
    painter.setPen(QPen(accent_colour(palette()), 2));
    painter.setBrush(card_colour(palette()));
    const std::size_t strokes = drawing_.strokes.size();
    if (*chosen_ < strokes) {
        for (const PlanPoint& point : drawing_.strokes[*chosen_].points) {
            const QPointF middle = in_head_box(head_box(), point);
            const QPointF corner(handle_half, handle_half);
            painter.drawRect(QRectF(middle - corner, middle + corner));
        }
        return;
    }
    painter.setBrush(Qt::NoBrush);
    const double radius = mark_radius(head_box()) + handle_half;
    painter.drawEllipse(in_head_box(head_box(), drawing_.marks[*chosen_ - strokes].at), radius,
                        radius);
}

void HeadCanvas::draw_crosshair(QPainter& painter) const {
    const QPointF middle = in_head_box(head_box(), crosshair_);
    painter.setPen(QPen(accent_colour(palette()), 2));
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
        painter.drawLine(middle + way * crosshair_hole, middle + way * crosshair_half);
    }
}

}  // namespace quarterturn
