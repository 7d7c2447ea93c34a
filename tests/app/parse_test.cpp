#include "app/qturn/parse.h"

#include <gtest/gtest.h>

#include "app/qturn/reply.h"

namespace quarterturn {
namespace {

using namespace std::chrono_literals;

TEST(ParseShift, ReadsHoursMinutesAndSecondsEitherWay) {
    EXPECT_EQ(shift_from("+00:47"), 47min);
    EXPECT_EQ(shift_from("00:47"), 47min);
    EXPECT_EQ(shift_from("-01:00:30"), -(1h + 30s));
    EXPECT_EQ(shift_from("-00:00:30"), -30s);
}

TEST(ParseShift, RefusesWhatIsNoShift) {
    for (const char* text : {"", "+", "47", "00:4x", "00::47", "+00:47:00:00", "--00:47", "123:00",
                             "+01:60", "+00:00:60"}) {
        EXPECT_THROW(shift_from(text), WrongUse) << text;
    }
}

TEST(ParseShot, ReadsStageAndAngleHoweverTheyAreParted) {
    const Shot shot{Stage::after, Angle::left_three_quarter};
    for (const char* text :
         {"after, left three-quarter", "after left-three-quarter", "After,Left_Three_Quarter"}) {
        EXPECT_EQ(shot_from(text), shot) << text;
    }
}

TEST(ParseShot, ReadsWhatShotTextWrites) {
    for (const Stage stage : all_stages) {
        for (const Angle angle : all_angles) {
            EXPECT_EQ(shot_from(shot_text({stage, angle})), (Shot{stage, angle}));
        }
    }
}

TEST(ParseShot, RefusesHalfAShot) {
    for (const char* text : {"", "after", "after,", "left", "left, after"}) {
        EXPECT_THROW(shot_from(text), WrongUse) << text;
    }
}

}  // namespace
}  // namespace quarterturn
