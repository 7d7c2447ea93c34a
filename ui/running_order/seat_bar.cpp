#include "ui/running_order/seat_bar.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int minutes_of_a_press = 5;
constexpr double rounding = 5;

QString clock_of(int minute) {
    return from_utf8(minute_text(minute));
}

}  // namespace

SeatBar::SeatBar(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setFont(text_font(TextRole::small));
}

void SeatBar::show_face(const BarFace& face) {
    face_ = face;
    const Seat& seat = face.seat;
    //: client, task, number of the stylist, begin, end
    QString words = tr("%1, %2, stylist %3, %4 to %5")
                        .arg(face.name, face.task, QString::number(seat.stylist + 1),
                             clock_of(seat.begins), clock_of(seat.ends));
    if (face.late > 0) words += QStringLiteral(", ") + tr("%n minute(s) late", nullptr, face.late);
    setAccessibleName(words);
    setAccessibleDescription(
        tr("Arrow keys move it by 5 minutes, with Shift by 1, or to another stylist."));
    setToolTip(words);
    update();
}

void SeatBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool heavy = dragging_ || face_.late > 0 || underMouse();
    const double line = heavy ? 2 : 1;
    painter.setPen(QPen(
        face_.late > 0 || dragging_ ? accent_colour(palette()) : outline_colour(palette()), line));
    painter.setBrush(face_.seat.part == SeatPart::finish ? wash_colour(palette())
                                                         : card_colour(palette()));
    const double inset = line / 2 + 0.5;
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), rounding,
                            rounding);
    draw_words(painter);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

void SeatBar::draw_words(QPainter& painter) const {
    const QRect inside = rect().adjusted(space(2), space(1), -space(1), -space(1));
    const int line = painter.fontMetrics().height();
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics bold_metrics(bold);
    QString name = face_.name;
    if (bold_metrics.horizontalAdvance(name) > inside.width()) {
        name = name.section(QLatin1Char(' '), 0, 0);
    }
    const QRect first(inside.left(), inside.top(), inside.width(), line);
    painter.setPen(ink_colour(palette()));
    painter.setFont(bold);
    painter.drawText(first, Qt::AlignLeading | Qt::AlignVCenter,
                     bold_metrics.elidedText(name, Qt::ElideRight, first.width()));
    painter.setFont(font());
    const QRect second = first.translated(0, line);
    const auto fitting = [&](const QString& words) {
        return painter.fontMetrics().elidedText(words, Qt::ElideRight, inside.width());
    };
    painter.drawText(second, Qt::AlignLeading | Qt::AlignVCenter, fitting(face_.task));
    const QRect third = second.translated(0, line);
    if (face_.late > 0) {
        draw_late(painter, third);
    } else {
        painter.drawText(third, Qt::AlignLeading | Qt::AlignVCenter,
                         fitting(clock_of(face_.seat.begins)));
    }
}

// A filled triangle and the minutes.
void SeatBar::draw_late(QPainter& painter, const QRect& place) const {
    const int side = place.height() / 2;
    QRect mark(place.left(), place.center().y() - side / 2, side, side);
    QRect words = place.adjusted(side + space(1), 0, 0, 0);
    if (isRightToLeft()) {
        mark.moveRight(place.right());
        words = place.adjusted(0, 0, -side - space(1), 0);
    }
    QPainterPath triangle;
    triangle.moveTo(mark.center().x(), mark.top());
    triangle.lineTo(mark.bottomRight());
    triangle.lineTo(mark.bottomLeft());
    triangle.closeSubpath();
    painter.fillPath(triangle, accent_colour(palette()));
    painter.drawText(words, Qt::AlignLeading | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(tr("%n min late", nullptr, face_.late),
                                                      Qt::ElideRight, words.width()));
}

void SeatBar::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) taken_at_ = event->globalPosition().toPoint();
    QAbstractButton::mousePressEvent(event);
}

void SeatBar::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return QAbstractButton::mouseMoveEvent(event);
    const QPoint by = event->globalPosition().toPoint() - taken_at_;
    if (!dragging_ && by.manhattanLength() < QApplication::startDragDistance()) return;
    if (!isDown() && !dragging_) return;  // given up
    dragging_ = true;
    raise();
    emit dragged(by);
}

void SeatBar::mouseReleaseEvent(QMouseEvent* event) {
    if (!dragging_) return QAbstractButton::mouseReleaseEvent(event);
    dragging_ = false;
    setDown(false);
    update();
    emit let_go();
}

void SeatBar::keyPressEvent(QKeyEvent* event) {
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    const bool others = event->modifiers() & (Qt::ControlModifier | Qt::AltModifier);
    const int minutes = (shift ? 1 : minutes_of_a_press) * (isRightToLeft() ? -1 : 1);
    if (event->key() == Qt::Key_Escape && dragging_) {
        dragging_ = false;
        setDown(false);
        emit given_up();
    } else if (others) {
        QAbstractButton::keyPressEvent(event);
    } else if (event->key() == Qt::Key_Left) {
        emit nudged(-minutes, 0);
    } else if (event->key() == Qt::Key_Right) {
        emit nudged(minutes, 0);
    } else if (event->key() == Qt::Key_Up) {
        emit nudged(0, -1);
    } else if (event->key() == Qt::Key_Down) {
        emit nudged(0, 1);
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
    } else {
        QAbstractButton::keyPressEvent(event);
    }
}

void SeatBar::focusInEvent(QFocusEvent* event) {
    QAbstractButton::focusInEvent(event);
    emit looked_at();
}

}  // namespace quarterturn
