#pragma once

#include <QCheckBox>

#include "ui/recipe/field.h"

namespace quarterturn {

// Yes or no, with its word.
class TickField : public Field {
    Q_OBJECT
  public:
    explicit TickField(const QString& word, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(bool ticked);
    bool value() const { return box_->isChecked(); }

  private:
    QCheckBox* box_;
};

}  // namespace quarterturn
