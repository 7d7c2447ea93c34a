#pragma once

#include <QWidget>

#include "indexer/record/time.h"

namespace quarterturn {

// A leaf of a calendar: weekday, a large day, the month, and how far away it is in words.
class DateBlock : public QWidget {
    Q_OBJECT
  public:
    DateBlock(Date date, Date today, QWidget* parent = nullptr);

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Date date_;
    Date today_;
};

// "today", "tomorrow", "in 3 days", "in 5 weeks", "12 days ago", "5 years ago"
QString distance_in_words(Date date, Date today);

}  // namespace quarterturn
