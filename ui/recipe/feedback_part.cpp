#include "ui/recipe/choice_field.h"
#include "ui/recipe/day_field.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/text_field.h"
#include "ui/shell/session.h"

namespace quarterturn {

FeedbackPart::FeedbackPart(RecipeAids& aids) : PartCard(RecipePlace::feedback) {
    const auto details = [](auto member) {
        return [member](Recipe & recipe) -> auto& {
            return recipe.feedback_details.*member;
        };
    };
    add(
        tr("Her words"), new LongTextField(tr("“softer round the face”")),
        [](Recipe & recipe) -> auto& { return recipe.feedback; });
    add(tr("Round her face"), new TextField(tr("a strand left out on each side")),
        details(&FeedbackDetails::front));
    add(tr("To change"), new LongTextField(tr("lower at the back")),
        details(&FeedbackDetails::to_change));
    add(tr("Her yes"), new DayField(aids.session().today()), details(&FeedbackDetails::yes_on));
    add(tr("Given how"), new TextField(tr("in the chair, by message")),
        details(&FeedbackDetails::yes_how));
    add(tr("Judged in"),
        new WordChoice<SeenIn>({SeenIn::mirror, SeenIn::photos, SeenIn::mirror_and_photos},
                               tr("not said")),
        details(&FeedbackDetails::seen_in));
}

}  // namespace quarterturn
