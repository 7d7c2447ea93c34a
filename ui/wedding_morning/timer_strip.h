#pragma once

#include <QWidget>
#include <vector>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/timer_watch.h"

namespace quarterturn {

class FlowLayout;
class TimerPill;

// The timers in view on every client. Hidden while there are none.
class TimerStrip : public QWidget {
    Q_OBJECT
  public:
    TimerStrip(const TimerWatch& watch, const BoardType& type, QWidget* parent = nullptr);

    const std::vector<TimerPill*>& pills() const { return pills_; }

  signals:
    void put_away(const quarterturn::Timer& timer);

  private:
    void build();
    void show_time();

    const TimerWatch& watch_;
    BoardType type_;
    FlowLayout* row_;
    std::vector<TimerPill*> pills_;
};

}  // namespace quarterturn
