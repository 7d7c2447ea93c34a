#pragma once

#include <QObject>
#include <QTimer>
#include <set>
#include <vector>

#include "indexer/record/board.h"
#include "ui/wedding_morning/board_world.h"

namespace quarterturn {

// How she wants to be told that a timer has ended; kept on this computer.
struct TimerWishes {
    bool sound = true;
    bool flash = true;  // else a steady frame
};
TimerWishes remembered_timer_wishes();
void remember(const TimerWishes& wishes);

// Looks at the clock for the timers of a wedding, also while she is on another screen. One that has
// ended sounds once.
class TimerWatch : public QObject {
    Q_OBJECT
  public:
    explicit TimerWatch(BoardWorld& world, QObject* parent = nullptr);

    void watch(std::vector<Timer> timers);
    const std::vector<Timer>& timers() const { return timers_; }
    std::int64_t now() const { return world_.utc_seconds(); }
    bool lit() const { return lit_; }  // the bright half of a flash

    void look();  // as it does by itself while there are timers

    // One flash a second; WCAG 2.2, 2.3.1 allows three.
    static constexpr int half_a_flash = 500;  // ms

  signals:
    void looked();
    void ended(const quarterturn::Timer& timer);

  private:
    BoardWorld& world_;
    std::vector<Timer> timers_;
    std::set<TimerId> rung_;
    QTimer clock_;
    bool lit_ = true;
};

}  // namespace quarterturn
