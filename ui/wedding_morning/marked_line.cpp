#include "ui/wedding_morning/marked_line.h"

#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

void draw_triangle(QPainter& painter, double side) {
    QPainterPath path(QPointF(side * 0.5, side * 0.08));
    path.lineTo(side * 0.97, side * 0.9);
    path.lineTo(side * 0.03, side * 0.9);
    path.closeSubpath();
    painter.drawPath(path);
}

// The ground of the mark is the accent, its inside the colour that reads on it.
void draw_exclamation(QPainter& painter, double side, const QColor& colour) {
    painter.setBrush(colour);
    painter.setPen(Qt::NoPen);
    painter.drawRoundedRect(QRectF(side * 0.45, side * 0.36, side * 0.1, side * 0.28), 1, 1);
    painter.drawEllipse(QPointF(side * 0.5, side * 0.76), side * 0.065, side * 0.065);
}

QPainterPath flame(double side) {
    QPainterPath path(QPointF(side * 0.52, side * 0.04));
    path.cubicTo(side * 0.6, side * 0.3, side * 0.9, side * 0.4, side * 0.86, side * 0.68);
    path.cubicTo(side * 0.82, side * 0.94, side * 0.6, side * 0.98, side * 0.5, side * 0.98);
    path.cubicTo(side * 0.3, side * 0.98, side * 0.12, side * 0.85, side * 0.14, side * 0.62);
    path.cubicTo(side * 0.16, side * 0.46, side * 0.3, side * 0.42, side * 0.32, side * 0.28);
    path.cubicTo(side * 0.42, side * 0.34, side * 0.44, side * 0.42, side * 0.44, side * 0.48);
    path.cubicTo(side * 0.54, side * 0.36, side * 0.54, side * 0.2, side * 0.52, side * 0.04);
    return path;
}

QPainterPath comb(double side) {
    QPainterPath path;
    path.addRoundedRect(QRectF(side * 0.08, side * 0.12, side * 0.84, side * 0.22), side * 0.1,
                        side * 0.1);
    for (int tooth = 0; tooth < 4; ++tooth) {
        path.addRect(QRectF(side * (0.12 + 0.22 * tooth), side * 0.34, side * 0.1, side * 0.56));
    }
    return path;
}

QPainterPath speech(double side) {
    QPainterPath path;
    path.addRoundedRect(QRectF(side * 0.05, side * 0.1, side * 0.9, side * 0.6), side * 0.2,
                        side * 0.2);
    QPainterPath tail(QPointF(side * 0.25, side * 0.6));
    tail.lineTo(side * 0.25, side * 0.95);
    tail.lineTo(side * 0.55, side * 0.65);
    return path.united(tail);
}

void draw_mark_of_line(QPainter& painter, LineMark mark, double side, const QPalette& palette) {
    const QColor accent = accent_colour(palette);
    const QPen thick(accent, std::max(2.0, side * 0.1), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.setPen(Qt::NoPen);
    painter.setBrush(accent);
    switch (mark) {
        case LineMark::caution:
            draw_triangle(painter, side);
            return draw_exclamation(painter, side, on_accent_colour(palette));
        case LineMark::heat:
            return painter.drawPath(flame(side));
        case LineMark::accessory:
            return painter.drawPath(comb(side));
        case LineMark::speech:
            return painter.drawPath(speech(side));
        case LineMark::sealed: {
            painter.drawEllipse(QRectF(0, 0, side, side));
            QPainterPath tick(QPointF(side * 0.27, side * 0.52));
            tick.lineTo(side * 0.44, side * 0.7);
            tick.lineTo(side * 0.75, side * 0.32);
            return painter.strokePath(tick, QPen(on_accent_colour(palette), side * 0.1,
                                                 Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        }
        case LineMark::open:
            painter.setBrush(Qt::NoBrush);
            painter.setPen(thick);
            return painter.drawEllipse(QRectF(0, 0, side, side).adjusted(2, 2, -2, -2));
        case LineMark::changed:
            painter.setPen(thick);
            painter.drawLine(QPointF(side * 0.1, side * 0.35), QPointF(side * 0.9, side * 0.35));
            painter.drawLine(QPointF(side * 0.1, side * 0.65), QPointF(side * 0.9, side * 0.65));
            painter.drawLine(QPointF(side * 0.7, side * 0.1), QPointF(side * 0.3, side * 0.9));
            return;
    }
}

}  // namespace

MarkedLine::MarkedLine(LineMark mark, const QStringList& lines, const BoardType& type,
                       BoardRole role, QWidget* parent)
    : QWidget(parent), mark_(mark) {
    const QFont font = type.font(role);
    const int line = QFontMetrics(font).height();
    side_ = qRound(line * 0.74);
    top_ = (line - side_) / 2;
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addSpacing(side_ + type.px(0.5));
    QVBoxLayout* column = make_column(0);
    column->setSpacing(type.px(0.15));
    row->addLayout(column, 1);
    for (const QString& words : lines) {
        QLabel* text = make_text(words);
        text->setFont(font);
        column->addWidget(text);
    }
}

void MarkedLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(isRightToLeft() ? width() - side_ : 0, top_);
    draw_mark_of_line(painter, mark_, side_, palette());
}

}  // namespace quarterturn
