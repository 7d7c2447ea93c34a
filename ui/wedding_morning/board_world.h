#pragma once
// What the board needs of the computer it stands on; tests give another.

#include <QObject>
#include <cstdint>
#include <functional>
#include <memory>

#include "ui/wedding_morning/bell.h"

namespace quarterturn {

// Asks the system to leave the screen on. Neither call waits for it.
class StayAwake : public QObject {
    Q_OBJECT
  public:
    virtual void ask() = 0;
    virtual void release() = 0;

  signals:
    void refused();  // the system does not offer it
};

struct BoardWorld {
    std::function<std::int64_t()> utc_seconds;  // since 1970
    std::shared_ptr<Bell> bell;
    std::shared_ptr<StayAwake> awake;
};

BoardWorld this_computer();

}  // namespace quarterturn
