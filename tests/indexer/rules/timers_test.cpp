#include "indexer/rules/timers.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <sstream>
#include <stdexcept>

namespace quarterturn {
namespace {

constexpr std::int64_t six_in_the_morning = 1'810'353'600;  // 2027-05-15T06:00Z

Timer cooling(int waits) {
    return timer_from(WeddingId{3}, "Ysolde: cooling", waits, six_in_the_morning);
}

std::string after(const Timer& timer, std::int64_t gone) {
    return time_left_text(timer, six_in_the_morning + gone);
}

TEST(Timers, TellWhatIsLeftToTheSecond) {
    EXPECT_EQ(after(cooling(15), 0), "15:00");
    EXPECT_EQ(after(cooling(15), 1), "14:59");
    EXPECT_EQ(after(cooling(15), 899), "0:01");
    EXPECT_EQ(after(cooling(62), -5), "1:02:05");
}

TEST(Timers, CountUpOnceTheyAreOver) {
    EXPECT_EQ(after(cooling(15), 900), "time is up");
    EXPECT_EQ(after(cooling(15), 959), "time is up");
    EXPECT_EQ(after(cooling(15), 960), "1 min over");
    EXPECT_EQ(after(cooling(15), 900 + 150), "2 min over");
    EXPECT_EQ(after(cooling(15), 900 + 3900), "1 h 5 min over");
}

TEST(Timers, TellTheLastMinuteApart) {
    const auto state = [](std::int64_t gone) {
        return timer_state(cooling(15), six_in_the_morning + gone);
    };
    EXPECT_EQ(state(839), TimerState::running);
    EXPECT_EQ(state(840), TimerState::last_minute);
    EXPECT_EQ(state(899), TimerState::last_minute);
    EXPECT_EQ(state(900), TimerState::over);
}

RC_GTEST_PROP(Timers, TheDigitsReadBackAsTheSecondsLeft, ()) {
    const int waits = *rc::gen::inRange(1, most_timer_minutes + 1);
    const int gone = *rc::gen::inRange(0, waits * 60);
    const Timer timer = cooling(waits);
    std::istringstream digits(after(timer, gone));
    std::int64_t left = 0;
    for (std::string part; std::getline(digits, part, ':');) left = left * 60 + std::stoi(part);
    RC_ASSERT(left == waits * 60 - gone);
}

TEST(Timers, AreNamedAfterTheFirstNameAndWhatWaits) {
    EXPECT_EQ(timer_name("Ysolde Vašnovič", "cooling"), "Ysolde: cooling");
    EXPECT_EQ(timer_name("Λευκή", "waiting"), "Λευκή: waiting");
}

TEST(Timers, AreRefusedWithoutANameOrWithImpossibleMinutes) {
    EXPECT_THROW(timer_from(WeddingId{1}, "  ", 5, 0), std::invalid_argument);
    EXPECT_THROW(timer_from(WeddingId{1}, "tea", 0, 0), std::invalid_argument);
    EXPECT_THROW(timer_from(WeddingId{1}, "tea", most_timer_minutes + 1, 0), std::invalid_argument);
}

}  // namespace
}  // namespace quarterturn
