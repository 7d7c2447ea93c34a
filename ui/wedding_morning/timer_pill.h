#pragma once

#include <QFrame>

#include "indexer/record/board.h"
#include "indexer/rules/timers.h"
#include "ui/wedding_morning/board_type.h"

class QLabel;
class QPushButton;

namespace quarterturn {

// One timer: a dial that empties, its name, the time left. The last minute says so and has a
// thick frame; once it is over the whole of it is filled, and with each flash is not.
class TimerPill : public QFrame {
    Q_OBJECT
  public:
    TimerPill(const Timer& timer, const BoardType& type, QWidget* parent = nullptr);

    void show_time(std::int64_t now, bool lit);
    const Timer& timer() const { return timer_; }
    QString time_said() const;
    bool filled() const { return filled_; }

  signals:
    void put_away();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void colour_words();
    void say_when_it_ends();

    Timer timer_;
    BoardType type_;
    QLabel* name_;
    QLabel* time_;
    QPushButton* away_;
    TimerState state_ = TimerState::running;
    double share_left_ = 1;
    bool filled_ = false;
};

}  // namespace quarterturn
