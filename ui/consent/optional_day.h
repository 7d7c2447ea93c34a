#pragma once

#include <QWidget>
#include <optional>

#include "indexer/record/time.h"

class QCheckBox;
class QDateEdit;

namespace quarterturn {

// What is proposed for a last day: two years later.
Date usual_end(Date today);

// A day that may be left open: a box to tick, and the day beside it.
class OptionalDay : public QWidget {
    Q_OBJECT
  public:
    // `proposed` stands in the field until she names another.
    OptionalDay(const QString& name, Date proposed, QWidget* parent = nullptr);

    std::optional<Date> day() const;
    void show_day(std::optional<Date> day);

  private:
    QCheckBox* has_;
    QDateEdit* day_;
};

}  // namespace quarterturn
