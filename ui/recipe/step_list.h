#pragma once

#include "ui/recipe/record_list.h"
#include "ui/recipe/step_card.h"

namespace quarterturn {

// The steps of the build in their order.
class StepList : public ListOf<Step, StepCard> {
  public:
    explicit StepList(RecipeAids& aids);

    void append(const Step& step);
    StepCard* card_in_hand() const;  // that the keyboard is in

  protected:
    QWidget* frame_of(Field& row) override;
    void renumber() override;
};

}  // namespace quarterturn
