#pragma once

#include <QFrame>

#include "indexer/record/time.h"

namespace quarterturn {

// From which day to which, asked for below a button.
class DaysChoice : public QFrame {
    Q_OBJECT
  public:
    DaysChoice(Date from, Date to, QWidget* parent);

  signals:
    void chosen(quarterturn::Date from, quarterturn::Date to);
};

}  // namespace quarterturn
