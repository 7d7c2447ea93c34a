#pragma once

#include <QLabel>
#include <QTimer>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_world.h"

namespace quarterturn {

// What time it is, large: "06:10".
class BoardClock : public QLabel {
    Q_OBJECT
  public:
    BoardClock(const BoardWorld& world, const BoardType& type, QWidget* parent = nullptr);

    void look();  // as it does by itself every second

  private:
    const BoardWorld& world_;
    QTimer second_;
};

}  // namespace quarterturn
