#include "indexer/record/words.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace quarterturn {
namespace {

TEST(Words, EachAngleHasItsOwnWordAndComesBackFromIt) {
    std::set<std::string_view> words;
    for (const Angle angle : all_angles) {
        words.insert(word(angle));
        EXPECT_EQ(parse_angle(word(angle)), angle);
    }
    EXPECT_EQ(words,
              (std::set<std::string_view>{"left", "front", "right", "back", "crown",
                                          "left three-quarter", "right three-quarter", "detail"}));
}

TEST(Words, EachOtherVocabularyComesBackFromItsWords) {
    for (const Stage stage : all_stages) EXPECT_EQ(parse_stage(word(stage)), stage);
    for (const SittingKind kind : {SittingKind::consultation, SittingKind::trial,
                                   SittingKind::wedding_day, SittingKind::model_shoot}) {
        EXPECT_EQ(parse_sitting_kind(word(kind)), kind);
    }
    for (const Worn worn : {Worn::ceremony, Worn::evening, Worn::other}) {
        EXPECT_EQ(parse_worn(word(worn)), worn);
    }
    for (const Need need : {Need::required, Need::nice_to_have}) {
        EXPECT_EQ(parse_need(word(need)), need);
    }
    for (const Flaw flaw :
         {Flaw::out_of_focus, Flaw::moved, Flaw::too_dark, Flaw::blown_out, Flaw::too_small}) {
        EXPECT_EQ(parse_flaw(word(flaw)), flaw);
    }
}

TEST(Words, CaseDashesAndSpacesDoNotMatter) {
    for (const auto* text : {"left three-quarter", "LEFT_THREE_QUARTER", "Left-Three Quarter"}) {
        EXPECT_EQ(parse_angle(text), Angle::left_three_quarter) << text;
    }
    EXPECT_EQ(parse_sitting_kind("Wedding-Day"), SittingKind::wedding_day);
    EXPECT_EQ(parse_flaw("out-of-focus"), Flaw::out_of_focus);
}

TEST(Words, AnUnknownWordIsNothing) {
    for (const auto* text : {"", "lef", "left ", "leftthree-quarter", "side", "links"}) {
        EXPECT_FALSE(parse_angle(text)) << text;
    }
    EXPECT_FALSE(parse_stage("in between"));
}

// A row of angles reads left, front, right, back.
TEST(Words, TheRowOfAnglesIsAsTheStylistSeesTheHead) {
    EXPECT_EQ(quarter_angles, (std::array{Angle::left, Angle::front, Angle::right, Angle::back}));
}

TEST(Mirrored, SwapsTheSidesAndNothingElse) {
    EXPECT_EQ(mirrored(Angle::left), Angle::right);
    EXPECT_EQ(mirrored(Angle::left_three_quarter), Angle::right_three_quarter);
    for (const Angle angle : {Angle::front, Angle::back, Angle::crown, Angle::detail}) {
        EXPECT_EQ(mirrored(angle), angle);
    }
    for (const Angle angle : all_angles) EXPECT_EQ(mirrored(mirrored(angle)), angle);
}

}  // namespace
}  // namespace quarterturn
