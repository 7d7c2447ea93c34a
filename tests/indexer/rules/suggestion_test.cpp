#include "indexer/rules/suggestion.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace quarterturn {
namespace {

std::optional<Angle> by_name(std::string_view name) {
    const auto suggestion = suggest_angle(name, {});
    return suggestion ? std::optional{suggestion->angle} : std::nullopt;
}

TEST(SuggestAngle, ReadsPlainFileNames) {
    EXPECT_EQ(by_name("IMG_0412 left.JPG"), Angle::left);
    EXPECT_EQ(by_name("back.heic"), Angle::back);
    EXPECT_EQ(by_name("2026-11-07_FRONT_03.jpg"), Angle::front);
    EXPECT_EQ(by_name("bun-crown-2.png"), Angle::crown);
    EXPECT_EQ(by_name("detail3.jpg"), Angle::detail);
    EXPECT_EQ(by_name("IMG_0412.JPG"), std::nullopt);
    EXPECT_EQ(by_name(""), std::nullopt);
    EXPECT_EQ(by_name(".left"), Angle::left);
}

TEST(SuggestAngle, OnlyWholeWordsCount) {
    for (const auto* name : {"leftover.jpg", "backup.jpg", "playback.jpg", "frontier.jpg",
                             "bright.jpg", "details.jpg", "gauche\u00e9left.jpg"}) {
        EXPECT_EQ(by_name(name), std::nullopt) << name;
    }
}

TEST(SuggestAngle, TheEndingIsNoPartOfTheName) {
    EXPECT_EQ(by_name("IMG_0412.back"), std::nullopt);
    EXPECT_EQ(by_name("left.back.jpg"), std::nullopt);
}

TEST(SuggestAngle, KnowsThreeQuarterInItsSpellings) {
    for (const auto* name :
         {"left three-quarter.jpg", "three quarter left.jpg", "LeftThreeQuarter.jpg",
          "left_threequarter.jpg", "3-4 left.jpg", "left_3_4.jpg", "left \u00be.jpg",
          "\u00beleft.jpg", "left 3-quarter.jpg", "IMG_12 left three_quarter 2.jpg"}) {
        EXPECT_EQ(by_name(name), Angle::left_three_quarter) << name;
    }
    EXPECT_EQ(by_name("three-quarter right.jpg"), Angle::right_three_quarter);
}

TEST(SuggestAngle, ADateIsNoThreeQuarter) {
    EXPECT_EQ(by_name("2026-3-4 left.jpg"), Angle::left);
    EXPECT_EQ(by_name("left 3-4-2026.jpg"), Angle::left);
}

TEST(SuggestAngle, SaysNothingWhereItIsUnclear) {
    EXPECT_EQ(by_name("left34.jpg"), std::nullopt);
    EXPECT_EQ(by_name("34 right.jpg"), std::nullopt);
    EXPECT_EQ(by_name("three-quarter.jpg"), std::nullopt);
    EXPECT_EQ(by_name("left and right.jpg"), std::nullopt);
    EXPECT_EQ(by_name("left three-quarter or left.jpg"), std::nullopt);
}

TEST(SuggestAngle, AKeywordGoesBeforeTheFileNameAndIsNamed) {
    const std::vector<std::string> keywords{"Trial", "Left", "bun"};
    const auto suggestion = suggest_angle("back.jpg", keywords);
    ASSERT_TRUE(suggestion);
    EXPECT_EQ(suggestion->angle, Angle::left);
    EXPECT_EQ(suggestion->source, "keyword 'Left'");
    EXPECT_EQ(suggest_angle("back.jpg", {})->source, "file name");
}

TEST(SuggestAngle, KeywordsThatDisagreeSayNothing) {
    const std::vector<std::string> keywords{"left", "back"};
    EXPECT_FALSE(suggest_angle("left.jpg", keywords));
}

TEST(SuggestAngle, KeywordsWithoutAnAngleLeaveItToTheFileName) {
    const std::vector<std::string> keywords{"trial"};
    EXPECT_EQ(suggest_angle("back.jpg", keywords)->source, "file name");
}

// Every angle's own word, in any case and with any of the usual separators, is understood.
RC_GTEST_PROP(SuggestAngle, UnderstandsEveryWordOfTheVocabulary, ()) {
    const Angle angle = *rc::gen::elementOf(all_angles);
    const char separator = *rc::gen::element('-', '_', ' ', '.');
    std::string text(word(angle));
    const bool upper = *rc::gen::arbitrary<bool>();
    for (char& c : text) {
        if (c == ' ' || c == '-') c = separator;
        if (upper && c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    }
    RC_ASSERT(by_name("IMG" + std::string(1, separator) + text + ".jpg") == angle);
}

RC_GTEST_PROP(SuggestAngle, AnyBytesAreBorne, (const std::string& name, const std::string& word)) {
    const std::vector<std::string> keywords{word};
    suggest_angle(name, keywords);
}

Photo seen(bool frontal, bool to_left, bool to_right) {
    Photo photo;
    HeadSigns signs;
    signs.frontal_face = frontal;
    signs.profile_to_left = to_left;
    signs.profile_to_right = to_right;
    photo.head_signs = signs;
    return photo;
}

// Seen from her own left side, a face looks to the viewer's left.
TEST(AngleOfPhoto, FollowsTheFaceWhereTheFileSaysNothing) {
    EXPECT_EQ(suggest_angle(seen(true, false, false))->angle, Angle::front);
    EXPECT_EQ(suggest_angle(seen(false, true, false))->angle, Angle::left);
    EXPECT_EQ(suggest_angle(seen(false, false, true))->angle, Angle::right);
    EXPECT_FALSE(suggest_angle(seen(false, true, true)));
    EXPECT_FALSE(suggest_angle(seen(false, false, false)));
    EXPECT_FALSE(suggest_angle(Photo{}));
}

TEST(AngleOfPhoto, AMirrorShowsTheOtherSide) {
    Photo photo = seen(false, true, false);
    photo.tags.mirrored = true;
    EXPECT_EQ(suggest_angle(photo)->angle, Angle::right);
}

TEST(AngleOfPhoto, WhatTheFileSaysGoesFirst) {
    Photo photo = seen(true, false, false);
    photo.suggestion.angle = Angle::crown;
    photo.suggestion.angle_source = "file name";
    EXPECT_EQ(suggest_angle(photo)->angle, Angle::crown);
    EXPECT_EQ(suggest_angle(photo)->source, "file name");
}

}  // namespace
}  // namespace quarterturn
