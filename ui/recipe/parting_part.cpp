#include "ui/recipe/choice_field.h"
#include "ui/recipe/drawing_field.h"
#include "ui/recipe/head_sketch.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/number_field.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_fields.h"

namespace quarterturn {
namespace {

// Her left or right, and how far from the centre.
class PartingFields : public RecordFields<PartingLine> {
  public:
    PartingFields() {
        using Side = WordChoice<PartingSide>;
        fields().tie(
            add({}, new Side({PartingSide::left, PartingSide::middle, PartingSide::right,
                              PartingSide::none},
                             tr("not said"))),
            [](PartingLine & line) -> auto& { return line.side; });
        fields().tie(
            add(tr("from the centre"), new SizeField(tr("cm"))),
            [](PartingLine & line) -> auto& { return line.from_centre_cm; });
    }
};

}  // namespace

PartingPart::PartingPart() : PartCard(RecipePlace::parting) {
    add(
        tr("Sections"), new LongTextField(tr("crown, two sides, nape, a front panel set apart")),
        [](Recipe & recipe) -> auto& { return recipe.sections; });
    add(
        tr("Panels"),
        new LineList({.add = tr("Add a panel or side section"),
                      .one = tr("panel %1"),
                      .remove = tr("Remove this panel"),
                      .removed = tr("removed a panel")},
                     [] { return new TextField(tr("front panel, to the ear")); }),
        [](Recipe & recipe) -> auto& { return recipe.panels; });
    add(
        tr("Parting"), new LongTextField(tr("deep, along the arch of her left brow")),
        [](Recipe & recipe) -> auto& { return recipe.parting; });
    add(
        tr("On the client's"), new PartingFields,
        [](Recipe & recipe) -> auto& { return recipe.parting_line; });
    add(
        tr("Drawn"), new DrawingField, [](Recipe & recipe) -> auto& { return recipe.head_plan; });
}

QWidget* PartingPart::make_picture(const Recipe& recipe) const {
    if (recipe.head_plan == HeadDrawing{}) return nullptr;
    return new HeadSketch(recipe.head_plan);
}

}  // namespace quarterturn
