#include "ui/recipe/long_text_field.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/text_field.h"

namespace quarterturn {

HairPart::HairPart() : PartCard(RecipePlace::hair) {
    const auto add_line = [this](const QString& word, const QString& example,
                                 std::string HairOnTheDay::*member) {
        add(
            word, new TextField(example), [member](Recipe & recipe) -> auto& {
                return recipe.hair_on_the_day.*member;
            });
    };
    add(
        tr("In words"), new LongTextField(tr("fine, slippery, freshly coloured")),
        [](Recipe & recipe) -> auto& { return recipe.hair; });
    add_line(tr("Washed"), tr("the evening before"), &HairOnTheDay::washed);
    add_line(tr("Dry or damp"), tr("dry"), &HairOnTheDay::damp);
    add_line(tr("Length"), tr("below the shoulder"), &HairOnTheDay::length);
    add_line(tr("Texture"), tr("natural wave"), &HairOnTheDay::texture);
    add_line(tr("Density"), tr("thick"), &HairOnTheDay::density);
    add_line(tr("Colour"), tr("dark blonde, highlights round the face"), &HairOnTheDay::colour);
    add_line(tr("Layers"), tr("left side too short to reach the back"), &HairOnTheDay::layers);
    add_line(tr("Extensions"), tr("none"), &HairOnTheDay::extensions);
    add_line(tr("Changed"), tr("cut since the last sitting"), &HairOnTheDay::changed);
}

}  // namespace quarterturn
