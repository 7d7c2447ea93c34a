#include "indexer/rules/heat_and_spray.h"

#include <gtest/gtest.h>

#include "indexer/record/caution.h"

namespace quarterturn {
namespace {

using Cautions = std::vector<std::string>;

Step step_saying(const std::string& words) {
    Step step;
    step.words = words;
    return step;
}

TEST(HeatAndSpray, AreSeenInWordsToolsAndProducts) {
    EXPECT_EQ(cautions_beside(step_saying("Gather the tail in a band.")), Cautions{});
    EXPECT_EQ(cautions_beside(step_saying("Wind two pieces on the TONGS.")),
              Cautions{heat_caution});
    EXPECT_EQ(cautions_beside(step_saying("Hairspray all over.")),
              Cautions{flammable_spray_caution});
    EXPECT_EQ(cautions_beside(step_saying("Brush it out, without spray.")), Cautions{});
    Step tool = step_saying("Bend the lengths.");
    tool.heat_tool = HeatTool{"crimper", {}, 160};
    tool.products = {{"texture spray", "", "lengths"}};
    EXPECT_EQ(cautions_beside(tool), (Cautions{heat_caution, flammable_spray_caution}));
}

TEST(HeatAndSpray, BelongToWhatComesBeforeAndAfterTheBuildToo) {
    Recipe recipe;
    EXPECT_EQ(cautions_beside_prep(recipe), Cautions{});
    EXPECT_EQ(cautions_beside_finish(recipe), Cautions{});
    recipe.heat_protection = "protection spray";
    EXPECT_EQ(cautions_beside_prep(recipe), Cautions{flammable_spray_caution});
    recipe.heat_tool = HeatTool{};
    EXPECT_EQ(cautions_beside_prep(recipe), (Cautions{heat_caution, flammable_spray_caution}));
    EXPECT_EQ(cautions_beside_finish(recipe), Cautions{});
    recipe.finish_details.spray = Hold::light;
    EXPECT_EQ(cautions_beside_finish(recipe), Cautions{flammable_spray_caution});
}

}  // namespace
}  // namespace quarterturn
