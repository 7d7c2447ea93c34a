#include "indexer/rules/sorting.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>

#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

Sitting sitting(std::int64_t id, std::string_view starts, std::string_view ends) {
    Sitting result;
    result.id = SittingId{id};
    result.starts = at(starts);
    result.ends = at(ends);
    return result;
}

std::vector<TimedPhoto> taken_at(const std::vector<std::string>& clocks) {
    std::vector<TimedPhoto> photos;
    std::int64_t id = 0;
    for (const std::string& clock : clocks) {
        photos.push_back({PhotoId{++id}, at("2026-05-02T" + clock)});
    }
    return photos;
}

// "b" before, "d" during, "a" after, in the order of time.
std::string stages_of(const std::vector<TimedPhoto>& photos, int looks = 1) {
    std::string text;
    for (const StageSuggestion& suggestion : suggest_stages(photos, looks)) {
        text += word(suggestion.stage).front();
    }
    return text;
}

TEST(SittingsByTime, HoursHoldBothTheirEnds) {
    const SittingsByTime sittings(std::vector{sitting(1, "2026-05-02T10:00", "2026-05-02T13:00"),
                                              sitting(2, "2026-05-02T13:00", "2026-05-02T14:00")});
    using Ids = std::vector<SittingId>;
    EXPECT_EQ(sittings.at(at("2026-05-02T09:59:59.999")), Ids{});
    EXPECT_EQ(sittings.at(at("2026-05-02T10:00")), Ids{SittingId{1}});
    EXPECT_EQ(sittings.at(at("2026-05-02T13:00")), (Ids{SittingId{1}, SittingId{2}}));
    EXPECT_EQ(sittings.at(at("2026-05-02T14:00:00.001")), Ids{});
}

// Also where some lie within others, and a long one reaches over many that begin later.
RC_GTEST_PROP(SittingsByTime, FindThoseThatLookingAtAllFinds, ()) {
    const LocalTime day = at("2026-05-02T00:00");
    std::vector<Sitting> sittings;
    for (int id = 1, count = *rc::gen::inRange(0, 12); id <= count; ++id) {
        Sitting one = sitting(id, "2026-05-02T00:00", "2026-05-02T00:00");
        one.starts = day + std::chrono::minutes{*rc::gen::inRange(0, 20)};
        one.ends = one.starts + std::chrono::minutes{*rc::gen::inRange(0, 20)};
        sittings.push_back(one);
    }
    const SittingsByTime by_time(sittings);
    for (int minute = -1; minute <= 41; ++minute) {
        const LocalTime moment = day + std::chrono::minutes{minute};
        std::vector<SittingId> all;
        for (const Sitting& one : sittings) {
            if (one.starts <= moment && moment <= one.ends) all.push_back(one.id);
        }
        RC_ASSERT(by_time.at(moment) == all);
    }
}

TEST(SuggestStages, ATrialFallsIntoBeforeDuringAndAfter) {
    const auto photos = taken_at(
        {"10:05", "10:06", "10:06:20", "10:07", "11:00", "11:02", "12:20", "12:21", "12:22"});
    EXPECT_EQ(stages_of(photos), "bbbbddaaa");
    const auto suggestions = suggest_stages(photos);
    EXPECT_EQ(suggestions[0].source, "taken before the first long gap");
    EXPECT_EQ(suggestions[4].source, "taken between long gaps");
    EXPECT_EQ(suggestions[8].source, "taken after the last long gap");
}

TEST(SuggestStages, WithTwoLooksTheLastTwoGroupsAreAfter) {
    const auto photos = taken_at({"10:05", "10:06", "11:00", "11:40", "11:41", "12:30", "12:31"});
    EXPECT_EQ(stages_of(photos, 1), "bbdddaa");
    EXPECT_EQ(stages_of(photos, 2), "bbdaaaa");
    EXPECT_EQ(stages_of(photos, 9), "bbaaaaa");
}

TEST(SuggestStages, ASinglePhotoBeforeAndAfterIsEnough) {
    EXPECT_EQ(stages_of(taken_at({"10:00", "12:00"})), "ba");
}

TEST(SuggestStages, WithoutALongGapNothingIsSuggested) {
    EXPECT_EQ(stages_of({}), "");
    EXPECT_EQ(stages_of(taken_at({"10:00"})), "");
    EXPECT_EQ(stages_of(taken_at({"10:00", "10:14:59"})), "");
    EXPECT_EQ(stages_of(taken_at({"10:00", "10:15"})), "ba");
}

// When she takes a photo every ten minutes, a pause of twenty is nothing out of the way.
TEST(SuggestStages, AGapMustStandOutFromTheOthers) {
    EXPECT_EQ(stages_of(taken_at({"10:00", "10:10", "10:20", "10:40", "10:50"})), "");
    EXPECT_EQ(stages_of(taken_at({"10:00", "10:10", "10:20", "10:50", "11:00"})), "bbbaa");
}

std::vector<TimedPhoto> random_photos() {
    const auto gaps = *rc::gen::container<std::vector<int>>(
        rc::gen::oneOf(rc::gen::inRange(0, 120), rc::gen::inRange(0, 7200)));
    std::vector<TimedPhoto> photos;
    LocalTime moment = at("2026-05-02T10:00");
    for (const int gap : gaps) {
        moment += seconds{gap};
        photos.push_back({PhotoId{static_cast<std::int64_t>(photos.size()) + 1}, moment});
    }
    return photos;
}

RC_GTEST_PROP(SuggestStages, GoForwardInTimeFromBeforeToAfter, ()) {
    const auto photos = random_photos();
    const auto stages = stages_of(photos, *rc::gen::inRange(0, 5));
    const auto forward = [](char one, char other) {
        return std::string("bda").find(one) < std::string("bda").find(other);
    };
    RC_ASSERT(std::is_sorted(stages.begin(), stages.end(), forward));
    if (!stages.empty()) {
        RC_ASSERT(stages.size() == photos.size());
        RC_ASSERT(stages.front() == 'b');
        RC_ASSERT(stages.back() == 'a');
    }
}

RC_GTEST_PROP(SuggestStages, ChangeOnlyAcrossAGapOfAQuarterHour, ()) {
    const auto photos = random_photos();
    const auto stages = stages_of(photos);
    for (std::size_t i = 1; i < stages.size(); ++i) {
        if (photos[i].moment - photos[i - 1].moment < long_gap) {
            RC_ASSERT(stages[i] == stages[i - 1]);
        }
    }
}

RC_GTEST_PROP(SuggestStages, TheOrderTheyComeInMeansNothing, ()) {
    auto photos = random_photos();
    std::map<PhotoId, Stage> before;
    for (const auto& suggestion : suggest_stages(photos)) {
        before[suggestion.photo] = suggestion.stage;
    }
    std::reverse(photos.begin(), photos.end());
    for (const auto& suggestion : suggest_stages(photos)) {
        RC_ASSERT(before.at(suggestion.photo) == suggestion.stage);
    }
}

TEST(ShiftFromPair, IsWhatTheWrongClockLacks) {
    EXPECT_EQ(shift_from_pair(at("2026-05-02T10:00:00.4"), at("2026-05-02T10:47:00.3")),
              minutes{47});
    EXPECT_EQ(shift_from_pair(at("2026-05-02T11:00"), at("2026-05-02T10:00:30")), seconds{-3570});
}

TEST(ShiftSizeText, SaysHoursMinutesAndSeconds) {
    EXPECT_EQ(shift_size_text(minutes{47}), "47 minutes");
    EXPECT_EQ(shift_size_text(seconds{-3661}), "1 hour 1 minute 1 second");
    EXPECT_EQ(shift_size_text(seconds{0}), "0 minutes");
}

}  // namespace
}  // namespace quarterturn
