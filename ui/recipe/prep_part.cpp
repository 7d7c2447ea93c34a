#include "indexer/record/caution.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_fields.h"
#include "ui/widgets/words.h"

namespace quarterturn {

PrepPart::PrepPart(RecipeAids& aids) : PartCard(RecipePlace::prep) {
    add(
        tr("Products"), make_product_list(aids),
        [](Recipe & recipe) -> auto& { return recipe.prep; });
    add(
        tr("Heat protection"), new TextField(aids, WordsFor::product, tr("protection spray")),
        [](Recipe & recipe) -> auto& { return recipe.heat_protection; });
    add(
        tr("Drying"), new TextField(tr("rough-dried, then round brush")),
        [](Recipe & recipe) -> auto& { return recipe.drying; });
    add(
        tr("Heat tool"), new HeatToolFields(aids),
        [](Recipe & recipe) -> auto& { return recipe.heat_tool; });
    add(
        tr("Winding"), new WindingFields, [](Recipe & recipe) -> auto& { return recipe.winding; });
    add(
        tr("Setting"), new SettingFields, [](Recipe & recipe) -> auto& { return recipe.setting; });
    add_words(from_utf8(heat_caution));
    add_words(from_utf8(flammable_spray_caution));
}

}  // namespace quarterturn
