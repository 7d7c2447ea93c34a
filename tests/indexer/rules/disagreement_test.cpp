#include "indexer/rules/disagreement.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

constexpr HeadSigns nobody{};
constexpr HeadSigns straight{
    .frontal_face = true, .profile_to_left = true, .profile_to_right = true};
constexpr HeadSigns to_left{
    .frontal_face = false, .profile_to_left = true, .profile_to_right = false};
constexpr HeadSigns to_right{
    .frontal_face = false, .profile_to_left = false, .profile_to_right = true};

bool asks(std::optional<Angle> angle, std::optional<HeadSigns> signs, bool mirrored = false) {
    Photo photo;
    photo.head_signs = signs;
    photo.tags.angle = angle;
    photo.tags.mirrored = mirrored;
    const auto question = disagreement(photo);
    EXPECT_TRUE(!question || question->ends_with('?')) << *question;
    return question.has_value();
}

TEST(Disagreement, asks_when_a_back_shows_any_face) {
    EXPECT_FALSE(asks(Angle::back, nobody));
    for (const auto& signs : {straight, to_left, to_right}) EXPECT_TRUE(asks(Angle::back, signs));
}

TEST(Disagreement, asks_when_a_front_shows_no_face_or_one_from_the_side) {
    EXPECT_FALSE(asks(Angle::front, straight));
    for (const auto& signs : {nobody, to_left, to_right}) EXPECT_TRUE(asks(Angle::front, signs));
}

// Who stands at the client's left and looks at her sees her face point to the left.
TEST(Disagreement, asks_when_a_profile_looks_the_wrong_way) {
    EXPECT_FALSE(asks(Angle::left, to_left));
    EXPECT_TRUE(asks(Angle::left, to_right));
    EXPECT_FALSE(asks(Angle::right, to_right));
    EXPECT_TRUE(asks(Angle::right, to_left));
    EXPECT_FALSE(asks(Angle::left_three_quarter, to_left));
    EXPECT_TRUE(asks(Angle::left_three_quarter, to_right));
    EXPECT_TRUE(asks(Angle::right_three_quarter, to_left));
}

TEST(Disagreement, takes_a_mirrored_photo_the_other_way_round) {
    EXPECT_TRUE(asks(Angle::left, to_left, true));
    EXPECT_FALSE(asks(Angle::left, to_right, true));
    EXPECT_FALSE(asks(Angle::front, straight, true));
    EXPECT_TRUE(asks(Angle::back, to_left, true));
}

TEST(Disagreement, asks_when_a_side_shows_the_face_straight_on) {
    EXPECT_TRUE(asks(Angle::left, straight));
    EXPECT_TRUE(asks(Angle::right, straight));
    EXPECT_FALSE(asks(Angle::left_three_quarter, straight));
    EXPECT_FALSE(asks(Angle::right_three_quarter, straight));
}

TEST(Disagreement, asks_nothing_where_a_missing_face_says_nothing) {
    EXPECT_FALSE(asks(Angle::left, nobody));
    EXPECT_FALSE(asks(Angle::crown, straight));
    EXPECT_FALSE(asks(Angle::detail, to_left));
}

TEST(Disagreement, asks_nothing_before_anybody_looked_or_tagged) {
    EXPECT_FALSE(asks(Angle::back, std::nullopt));
    EXPECT_FALSE(asks(std::nullopt, straight));
}

}  // namespace
}  // namespace quarterturn
