#pragma once

#include <optional>

#include "ui/recipe/field.h"

class QComboBox;

namespace quarterturn {

class WholeNumberField;

// How hot a tool stands, in the unit that it shows: the other is nothing.
struct Degrees {
    std::optional<int> celsius;
    std::optional<int> fahrenheit;
};

class TemperatureField : public Field {
    Q_OBJECT
  public:
    explicit TemperatureField(QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(const Degrees& degrees);
    Degrees value() const;

  private:
    WholeNumberField* number_;
    QComboBox* unit_;
};

}  // namespace quarterturn
