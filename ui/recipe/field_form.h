#pragma once

#include "ui/recipe/field.h"

class QFormLayout;

namespace quarterturn {

// Fields below each other, each with its word before it, or above it where there is no room.
class FieldForm : public Field {
    Q_OBJECT
  public:
    explicit FieldForm(QWidget* parent = nullptr);

    void add(const QString& word, Field& field);
    void add_below(QWidget& widget);  // across the whole width

    // `whole` before each word, for a screen reader: "step 3, pins".
    void name_it(const QString& whole) override;
    void focus_first();

  private:
    QFormLayout* rows_;
    std::vector<std::pair<QString, Field*>> fields_;
};

}  // namespace quarterturn
