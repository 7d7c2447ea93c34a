#pragma once

#include <optional>

#include "indexer/record/time.h"
#include "ui/recipe/field.h"

class QDateEdit;
class QPushButton;

namespace quarterturn {

// A day that may be left open: a button puts today there, another takes it away.
class DayField : public Field {
    Q_OBJECT
  public:
    explicit DayField(Date today, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(std::optional<Date> day);
    std::optional<Date> value() const;

  private:
    void say(bool said);

    QPushButton* add_;
    QDateEdit* day_;
    QPushButton* remove_;
    bool said_ = false;
};

}  // namespace quarterturn
