#include "indexer/looks/time_lanes.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

// Two sets that cool at once with the first stylist, and hair in one go with the second.
std::vector<Seat> seats() {
    return {
        {ClientId{1}, SeatPart::set, 0, 395, 415},    {ClientId{2}, SeatPart::set, 0, 415, 435},
        {ClientId{3}, SeatPart::set, 1, 400, 445},    {ClientId{1}, SeatPart::finish, 0, 440, 470},
        {ClientId{2}, SeatPart::finish, 0, 470, 500}, {ClientId{4}, SeatPart::set, 0, 500, 520},
        {ClientId{4}, SeatPart::finish, 0, 540, 550}};
}

TEST(TimeLanes, HairThatCoolsAtTheSameTimeLiesInLanesOfItsOwn) {
    const auto found = coolings(seats());
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].from, 415);
    EXPECT_EQ(found[0].to, 440);
    EXPECT_EQ(found[0].lane, 0);
    EXPECT_EQ(found[1].client, ClientId{2});
    EXPECT_EQ(found[1].lane, 1);
    EXPECT_EQ(found[2].lane, 0);  // free again
}

TEST(TimeLanes, AChartRunsOverWholeHalfHours) {
    EXPECT_EQ(chart_hours(seats()).from, 390);
    EXPECT_EQ(chart_hours(seats()).to, 570);
    EXPECT_LT(chart_hours({}).from, chart_hours({}).to);
}

TEST(TimeLanes, ARoomyChartShowsReadyByTimesAndHasRoomBefore) {
    MorningNeeds needs;
    needs.clients.resize(1);
    needs.clients[0].ready_by = 605;
    EXPECT_EQ(roomy_chart_hours(needs, seats()).from, 360);
    EXPECT_EQ(roomy_chart_hours(needs, seats()).to, 630);
}

}  // namespace
}  // namespace quarterturn
