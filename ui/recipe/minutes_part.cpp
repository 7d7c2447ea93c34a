#include <QLabel>

#include "ui/recipe/number_field.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

MinutesPart::MinutesPart() : PartCard(RecipePlace::minutes), steps_(make_quiet({})) {
    add(
        tr("Hands-on, in all"), new WholeNumberField(tr("minutes")),
        [](Recipe & recipe) -> auto& { return recipe.hands_on_minutes; });
    add(
        tr("Waiting, in all"), new WholeNumberField(tr("minutes")),
        [](Recipe & recipe) -> auto& { return recipe.waiting_minutes; });
    add_below(*steps_);
}

void MinutesPart::take_note_of(const Recipe& recipe) {
    int hands_on = 0;
    int waiting = 0;
    for (const Step& step : recipe.build) {
        hands_on += step.minutes.value_or(0);
        waiting += step.waiting_minutes.value_or(0);
    }
    steps_->setText(
        hands_on + waiting == 0
            ? tr("No step says its minutes yet.")
            //: two numbers of minutes
            : tr("The steps add up to %1 hands-on and %2 waiting.").arg(hands_on).arg(waiting));
}

}  // namespace quarterturn
