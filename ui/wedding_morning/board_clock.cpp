#include "ui/wedding_morning/board_clock.h"

#include <QDateTime>

namespace quarterturn {

BoardClock::BoardClock(const BoardWorld& world, const BoardType& type, QWidget* parent)
    : QLabel(parent), world_(world) {
    setFont(type.font(BoardRole::heading));
    setMinimumHeight(type.target());
    connect(&second_, &QTimer::timeout, this, &BoardClock::look);
    second_.start(1000);
    look();
}

void BoardClock::look() {
    const QDateTime now = QDateTime::fromSecsSinceEpoch(world_.utc_seconds());
    const QString time = now.toString(QStringLiteral("HH:mm"));
    if (time == text()) return;
    setText(time);
    setAccessibleName(tr("It is %1").arg(time));
}

}  // namespace quarterturn
