// Forms of dates and times: ISO 8601-1:2019 (extended format); offsets: EXIF 2.32, OffsetTime.

#include "indexer/record/time.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <ctime>

namespace quarterturn {
namespace {

using namespace std::chrono;

TEST(ParseDate, TakesRealDatesOnly) {
    EXPECT_EQ(parse_date("2026-11-07"), (Date{year{2026}, November, day{7}}));
    EXPECT_TRUE(parse_date("2024-02-29"));
    for (const auto* text :
         {"2026-02-29", "2100-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-1-07",
          "2026-11-07 ", " 2026-11-07", "26-11-07", "", "2026:11:07"}) {
        EXPECT_FALSE(parse_date(text)) << text;
    }
}

TEST(ParseLocalTime, SecondsAndFractionMayBeLeftOut) {
    const auto ten = parse_local_time("2026-11-07T10:12");
    ASSERT_TRUE(ten);
    EXPECT_EQ(parse_local_time("2026-11-07 10:12:00"), ten);
    EXPECT_EQ(parse_local_time("2026-11-07T10:12:00.000"), ten);
    EXPECT_EQ(*parse_local_time("2026-11-07T10:12:03.61") - *ten, milliseconds{3610});
}

// EXIF lets the fraction have any number of digits; nine fill a nanosecond.
TEST(ParseLocalTime, MoreThanNineDigitsOfAFractionAreDropped) {
    EXPECT_EQ(parse_local_time("2026-11-07T10:12:03.1234567899999"),
              parse_local_time("2026-11-07T10:12:03.123456789"));
}

TEST(ParseLocalTime, RefusesWhatIsNoTime) {
    for (const auto* text :
         {"2026-11-07", "2026-11-07T", "2026-11-07T24:00", "2026-11-07T10:60",
          "2026-11-07T10:12:60", "2026-11-07T10:12:03.", "2026-11-07T10:12:03.x",
          "2026-11-07T10:12Z", "2026-11-07X10:12", "2026-11-07T1012", "0000-00-00T00:00:00", ""}) {
        EXPECT_FALSE(parse_local_time(text)) << text;
    }
}

// A LocalTime counts 64 bits of nanoseconds from 1970: about 292 years either way.
TEST(ParseLocalTime, RefusesYearsThatItCannotHold) {
    EXPECT_FALSE(parse_local_time("0001-01-01T00:00:00"));
    EXPECT_FALSE(parse_local_time("1677-12-31T23:59:59"));
    EXPECT_FALSE(parse_local_time("2262-01-01T00:00:00"));
    EXPECT_FALSE(parse_local_time("9999-12-31T23:59:59"));
    EXPECT_EQ(iso_text(*parse_local_time("1678-01-01T00:00:00")), "1678-01-01T00:00:00");
    EXPECT_EQ(iso_text(*parse_local_time("2261-12-31T23:59:59.999999999"), 9),
              "2261-12-31T23:59:59.999999999");
}

TEST(IsoText, CutsTheFractionToTheDigitsAskedFor) {
    const auto time = *parse_local_time("2026-11-07T10:12:03.619");
    EXPECT_EQ(iso_text(time), "2026-11-07T10:12:03");
    EXPECT_EQ(iso_text(time, 2), "2026-11-07T10:12:03.61");
    EXPECT_EQ(iso_text(time, 9), "2026-11-07T10:12:03.619000000");
    EXPECT_EQ(clock_text(time), "10:12");
}

TEST(IsoText, HoldsBefore1970) {
    const auto time = *parse_local_time("1969-12-31T23:59:59.25");
    EXPECT_EQ(iso_text(time, 2), "1969-12-31T23:59:59.25");
    EXPECT_EQ(iso_text(date_of(time)), "1969-12-31");
}

TEST(Offset, IsReadAndWrittenWithItsSign) {
    EXPECT_EQ(parse_offset("+01:00"), minutes{60});
    EXPECT_EQ(parse_offset("-03:30"), minutes{-210});
    EXPECT_EQ(parse_offset("Z"), minutes{0});
    EXPECT_EQ(parse_offset("+14:00"), hours{14});
    EXPECT_EQ(offset_text(minutes{-210}), "-03:30");
    EXPECT_EQ(offset_text(minutes{0}), "+00:00");
    for (const auto* text :
         {"", "01:00", "+1:00", "+01:60", "+14:01", "+15:00", "   :  ", "+01:00 "}) {
        EXPECT_FALSE(parse_offset(text)) << text;
    }
}

RC_GTEST_PROP(LocalTimes, ComeBackFromTheirText, ()) {
    const auto time = LocalTime{nanoseconds{
        *rc::gen::inRange<std::int64_t>(-9'200'000'000'000'000'000, 9'200'000'000'000'000'000)}};
    RC_ASSERT(parse_local_time(iso_text(time, 9)) == time);
}

RC_GTEST_PROP(Offsets, ComeBackFromTheirText, ()) {
    const minutes offset{*rc::gen::inRange(-14 * 60, 14 * 60 + 1)};
    RC_ASSERT(parse_offset(offset_text(offset)) == offset);
}

// The C library's calendar is the oracle.
RC_GTEST_PROP(LocalTimes, AgreeWithTheSystemsCalendar, ()) {
    const auto second = *rc::gen::inRange<std::int64_t>(-9'000'000'000, 9'000'000'000);
    const auto as_time_t = static_cast<std::time_t>(second);
    std::tm parts{};
    gmtime_r(&as_time_t, &parts);
    std::array<char, 32> text{};
    std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%S", &parts);
    RC_ASSERT(iso_text(LocalTime{seconds{second}}) == text.data());
}

RC_GTEST_PROP(ParseLocalTime, AnyBytesAreBorne, (const std::string& text)) {
    parse_local_time(text);
    parse_date(text);
    parse_offset(text);
}

}  // namespace
}  // namespace quarterturn
