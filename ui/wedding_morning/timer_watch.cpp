#include "ui/wedding_morning/timer_watch.h"

#include <QSettings>

#include "indexer/rules/timers.h"

namespace quarterturn {
namespace {

const QString sound_key = QStringLiteral("board/timer_sounds");
const QString flash_key = QStringLiteral("board/timer_flashes");

}  // namespace

TimerWishes remembered_timer_wishes() {
    const QSettings settings;
    return {settings.value(sound_key, true).toBool(), settings.value(flash_key, true).toBool()};
}

void remember(const TimerWishes& wishes) {
    QSettings settings;
    settings.setValue(sound_key, wishes.sound);
    settings.setValue(flash_key, wishes.flash);
}

TimerWatch::TimerWatch(BoardWorld& world, QObject* parent) : QObject(parent), world_(world) {
    clock_.setInterval(half_a_flash);
    connect(&clock_, &QTimer::timeout, this, &TimerWatch::look);
}

void TimerWatch::watch(std::vector<Timer> timers) {
    timers_ = std::move(timers);
    if (timers_.empty()) {
        clock_.stop();
    } else if (!clock_.isActive()) {
        clock_.start();
    }
    look();
}

void TimerWatch::look() {
    const TimerWishes wishes = remembered_timer_wishes();
    lit_ = !wishes.flash || !lit_;
    bool ring = false;
    for (const Timer& timer : timers_) {
        if (timer_state(timer, now()) != TimerState::over || !rung_.insert(timer.id).second) {
            continue;
        }
        ring = wishes.sound;
        emit ended(timer);
    }
    if (ring) world_.bell->ring();
    emit looked();
}

}  // namespace quarterturn
