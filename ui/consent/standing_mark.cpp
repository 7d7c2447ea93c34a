#include "ui/consent/standing_mark.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 5;
constexpr int sixteenths = 16;  // of a degree, as QPainter counts

void draw_tick(QPainter& painter, const QRectF& round) {
    const QPointF middle = round.center();
    const double part = round.width() / 10;
    painter.drawPolyline(QPolygonF({middle + QPointF(-2.4 * part, 0.2 * part),
                                    middle + QPointF(-0.6 * part, 2 * part),
                                    middle + QPointF(2.5 * part, -1.9 * part)}));
}

}  // namespace

StandingMark::StandingMark(QWidget* parent) : QWidget(parent) {
    setFixedSize(space(side_steps), space(side_steps));
}

void StandingMark::show_standing(Standing standing) {
    standing_ = standing;
    update();
}

void StandingMark::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = space(1) / 2.0;
    const QRectF round = QRectF(rect()).adjusted(line, line, -line, -line);
    const bool granted = standing_ == Standing::granted;
    const QColor colour = granted ? accent_colour(palette()) : outline_colour(palette());
    painter.setPen(QPen(colour, line));
    painter.setBrush(granted ? QBrush(colour) : QBrush(Qt::NoBrush));
    painter.drawEllipse(round);
    if (granted) {
        painter.setPen(
            QPen(on_accent_colour(palette()), line, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        draw_tick(painter, round);
    } else if (standing_ == Standing::declined || standing_ == Standing::withdrawn) {
        const double half = round.width() / 4;
        const QPointF middle = round.center();
        painter.setPen(QPen(ink_colour(palette()), line, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(middle - QPointF(half, 0), middle + QPointF(half, 0));
    } else if (standing_ != Standing::not_asked) {
        painter.setBrush(colour);
        painter.drawPie(round, 90 * sixteenths, 180 * sixteenths);
    }
}

}  // namespace quarterturn
