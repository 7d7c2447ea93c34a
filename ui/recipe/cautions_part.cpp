#include "indexer/record/caution.h"
#include "ui/recipe/day_field.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_fields.h"
#include "ui/shell/session.h"
#include "ui/theme/type.h"
#include "ui/widgets/words.h"

namespace quarterturn {

CautionsPart::CautionsPart(RecipeAids& aids) : PartCard(RecipePlace::cautions) {
    using Sensitivities = ListOf<Sensitivity, SensitivityFields>;
    add(
        tr("In words"), new LongTextField(tr("none known")),
        [](Recipe & recipe) -> auto& { return recipe.cautions; });
    const Date today = aids.session().today();
    add(
        tr("Sensitive to"),
        new Sensitivities({.add = tr("Add a sensitivity"),
                           .one = tr("sensitivity %1"),
                           .remove = tr("Remove this sensitivity"),
                           .removed = tr("removed a sensitivity")},
                          [today] { return new SensitivityFields(today); }),
        [](Recipe & recipe) -> auto& { return recipe.caution_details.sensitivities; });
    add(
        tr("Scalp"), new TextField(tr("dry, flaky behind the ears")),
        [](Recipe & recipe) -> auto& { return recipe.caution_details.scalp; });
    add(
        tr("Tender spots"), new TextField(tr("above the left ear")),
        [](Recipe & recipe) -> auto& { return recipe.caution_details.tender; });
    add_words(from_utf8(no_medical_advice));
}

QFont CautionsPart::line_font() const {
    return text_font(TextRole::heading);
}

}  // namespace quarterturn
