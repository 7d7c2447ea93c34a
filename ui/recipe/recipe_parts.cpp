#include "ui/recipe/recipe_parts.h"

namespace quarterturn {

std::vector<PartCard*> make_recipe_parts(RecipeAids& aids) {
    return {
        new CautionsPart(aids), new HairPart,         new PrepPart(aids), new PartingPart,
        new BuildPart(aids),    new PiecesPart(aids), new FinishPart,     new SecondLookPart(aids),
        new FeedbackPart(aids), new MinutesPart};
}

}  // namespace quarterturn
