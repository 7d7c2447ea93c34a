#pragma once

#include <optional>

#include "ui/recipe/field.h"

class QLineEdit;

namespace quarterturn {

// A number and what it counts ("mm", "minutes"), or nothing.
class NumberField : public Field {
    Q_OBJECT
  public:
    explicit NumberField(const QString& unit, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    QLineEdit& line() { return *line_; }

  protected:
    void show_text(const QString& text);
    QString text() const;

  private:
    QLineEdit* line_;
};

class WholeNumberField : public NumberField {
    Q_OBJECT
  public:
    explicit WholeNumberField(const QString& unit, QWidget* parent = nullptr);

    void show_value(std::optional<int> number);
    std::optional<int> value() const;
};

// With a digit or two behind the point.
class SizeField : public NumberField {
    Q_OBJECT
  public:
    explicit SizeField(const QString& unit, QWidget* parent = nullptr);

    void show_value(std::optional<double> size);
    std::optional<double> value() const;
};

}  // namespace quarterturn
