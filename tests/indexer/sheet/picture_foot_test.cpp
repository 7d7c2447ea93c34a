// The words below a picture of a pair take a quarter of it at most.

#include "indexer/sheet/picture_foot.h"

#include <gtest/gtest.h>

#include "tests/indexer/sheet/plain_ruler.h"

namespace quarterturn {
namespace {

constexpr Size square{180, 180};

std::string characters(int count) {
    std::string text;
    for (int i = 0; i < count; ++i) text += i % 6 == 5 ? " " : "é";
    return text;
}

TEST(PictureFoot, SaysHowManyCharactersFitAndThoseFit) {
    PlainRuler ruler;
    const std::string reason = reason_against_foot(ruler, square, {"", characters(9000), ""});
    const auto about = reason.find("9000 characters about ");
    ASSERT_NE(about, std::string::npos) << reason;
    const int fits = std::stoi(reason.substr(about + std::string("9000 characters about ").size()));
    EXPECT_GT(fits, 100);
    EXPECT_EQ(reason_against_foot(ruler, square, {"", characters(fits), ""}), "");
    EXPECT_FALSE(foot_of(ruler, square, {"", characters(fits), ""}).too_high());
}

TEST(PictureFoot, LeavesLessForACaptionWhereMoreStandsBesideIt) {
    PlainRuler ruler;
    const auto fits = [&](const FootWords& words) {
        return reason_against_foot(ruler, square, words).empty();
    };
    int length = 10;
    while (fits({"", characters(length), ""})) length += 10;
    EXPECT_FALSE(fits({"Pins and Paper", characters(length - 10), characters(300)}));
}

TEST(PictureFoot, SaysWhenNoCaptionWouldFit) {
    PlainRuler ruler;
    const std::string reason =
        reason_against_foot(ruler, square, {characters(9000), "A low bun", ""});
    EXPECT_NE(reason.find("even without a caption"), std::string::npos) << reason;
}

}  // namespace
}  // namespace quarterturn
