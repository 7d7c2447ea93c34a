#include "indexer/record/caution.h"
#include "ui/recipe/choice_field.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/text_field.h"
#include "ui/widgets/words.h"

namespace quarterturn {

FinishPart::FinishPart() : PartCard(RecipePlace::finish) {
    add(
        tr("In words"), new LongTextField(tr("mist all over, press the crown down")),
        [](Recipe & recipe) -> auto& { return recipe.finish; });
    add(
        tr("Hold of the spray"),
        new WordChoice<Hold>({Hold::light, Hold::regular, Hold::strong}, tr("not said")),
        [](Recipe & recipe) -> auto& { return recipe.finish_details.spray; });
    add(
        tr("Smoothing"), new TextField(tr("a pea of cream on the hairline")),
        [](Recipe & recipe) -> auto& { return recipe.finish_details.smoothing; });
    add(
        tr("Shine"), new TextField(tr("a breath, from an arm's length")),
        [](Recipe & recipe) -> auto& { return recipe.finish_details.shine; });
    add_words(from_utf8(flammable_spray_caution));
}

}  // namespace quarterturn
