#include "indexer/rules/flaws.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

Measures good() {
    Measures measures;
    measures.focus = 5;
    measures.motion = 0.2;
    measures.mean_light = 0.5;
    return measures;
}

std::vector<Flaw> judge(const Measures& measures, int width = 3000, int height = 4000) {
    return judge_flaws(measures, width, height);
}

TEST(JudgeFlaws, finds_none_in_a_sharp_photo_well_lit_even_of_straight_hair) {
    EXPECT_TRUE(judge(good()).empty());
    Measures strands = good();
    strands.motion = 0.9;
    EXPECT_TRUE(judge(strands).empty());
}

TEST(JudgeFlaws, tells_moved_from_out_of_focus) {
    Measures soft = good();
    soft.focus = 1.5;
    EXPECT_EQ(judge(soft), std::vector{Flaw::moved});
    soft.motion = 0.03;
    EXPECT_EQ(judge(soft), std::vector{Flaw::out_of_focus});
}

TEST(JudgeFlaws, accuses_no_photo_whose_focus_could_not_be_told) {
    Measures plain = good();
    plain.focus = 0;
    EXPECT_TRUE(judge(plain).empty());
}

TEST(JudgeFlaws, finds_too_dark_and_blown_out) {
    Measures dark = good();
    dark.mean_light = 0.2;
    EXPECT_EQ(judge(dark), std::vector{Flaw::too_dark});
    Measures bright = good();
    bright.mean_light = 0.9;
    bright.clipped_highlights = 0.7;
    EXPECT_EQ(judge(bright), std::vector{Flaw::blown_out});
}

TEST(JudgeFlaws, leaves_a_white_wall_alone) {
    Measures wall = good();
    wall.mean_light = 0.8;
    wall.clipped_highlights = 0.25;
    EXPECT_TRUE(judge(wall).empty());
}

TEST(JudgeFlaws, looks_at_the_long_edge_for_size_whichever_way_it_lies) {
    EXPECT_EQ(judge(good(), 600, 999), std::vector{Flaw::too_small});
    EXPECT_EQ(judge(good(), 999, 600), std::vector{Flaw::too_small});
    EXPECT_TRUE(judge(good(), 600, 1000).empty());
}

TEST(JudgeFlaws, names_every_flaw_a_photo_has) {
    Measures bad = good();
    bad.focus = 1.2;
    bad.motion = 0;
    bad.mean_light = 0.1;
    const std::vector expected{Flaw::out_of_focus, Flaw::too_dark, Flaw::too_small};
    EXPECT_EQ(judge(bad, 100, 100), expected);
}

}  // namespace
}  // namespace quarterturn
