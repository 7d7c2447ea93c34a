#pragma once

#include "ui/recipe/field.h"

namespace quarterturn {

class FlowLayout;

// A few fields beside each other, each with its word before it, going on to the next line where
// there is no room.
class FlowOfFields : public Field {
    Q_OBJECT
  public:
    explicit FlowOfFields(QWidget* parent = nullptr);

    // `whole` before the word of each field: "product 2: amount".
    void name_it(const QString& whole) override;

  protected:
    template <class OneField>
    OneField* add(const QString& word, OneField* field, int width_steps = 0) {
        place(word, *field, width_steps);
        return field;
    }

  private:
    void place(const QString& word, Field& field, int width_steps);

    FlowLayout* flow_;
    std::vector<std::pair<QString, Field*>> fields_;
};

}  // namespace quarterturn
