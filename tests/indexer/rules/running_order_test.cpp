#include "indexer/rules/running_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

#include "indexer/rules/running_order_check.h"
#include "tests/indexer/rules/running_order_parties.h"

namespace quarterturn {
namespace {

TEST(RunningOrder, UsesTheTimeInWhichASetCools) {
    const MorningNeeds needs = three_by_half_past_twelve();
    const RunningOrder order = plan_morning(needs);
    EXPECT_EQ(order.late_in_all, 0);
    EXPECT_EQ(order.begins, 750 - 22 - 43 - 20 - 25 - 40);  // nobody stands idle
    EXPECT_TRUE(order.proven);
    EXPECT_EQ(order.seats.back().client, ClientId{1});
    EXPECT_EQ(order.seats.back().ends, 750);
}

TEST(RunningOrder, ASecondStylistLetsItBeginLater) {
    MorningNeeds needs = three_by_half_past_twelve();
    needs.stylists.resize(2);
    EXPECT_GT(plan_morning(needs).begins, plan_morning(three_by_half_past_twelve()).begins);
    needs.stylists[0].arrives = 700;
    needs.stylists[1].arrives = 700;
    const RunningOrder late = plan_morning(needs);
    EXPECT_GT(late.late_in_all, 0);
    EXPECT_EQ(check_morning(needs, late.seats).lateness.size(),
              static_cast<std::size_t>(3 - std::ranges::count(late.late, 0)));
}

TEST(RunningOrder, IsTheBestFoundWhenStepsRunOutAndStillKeepsEveryRule) {
    MorningNeeds needs = three_by_half_past_twelve();
    for (int i = 4; i <= 12; ++i) needs.clients.push_back(client(i, {15 + i, 20, 25, 12 + i}, 760));
    needs.stylists.resize(2);
    const RunningOrder order = plan_morning(needs, 50);
    EXPECT_FALSE(order.proven);
    EXPECT_EQ(check_morning(needs, order.seats).broken, std::vector<std::string>{});
    EXPECT_EQ(order.seats, plan_morning(needs, 50).seats);
}

TEST(RunningOrder, RefusesWhatCannotBePlanned) {
    EXPECT_THROW(plan_morning({}), std::invalid_argument);
    MorningNeeds needs = three_by_half_past_twelve();
    needs.clients[0].first = true;
    EXPECT_THROW(plan_morning(needs), std::invalid_argument);
    needs = three_by_half_past_twelve();
    needs.clients[1].work = {};
    EXPECT_THROW(plan_morning(needs), std::invalid_argument);
    needs = three_by_half_past_twelve();
    needs.stylists.resize(5);
    EXPECT_THROW(plan_morning(needs), std::invalid_argument);
    needs = three_by_half_past_twelve();
    needs.clients.resize(13, needs.clients[2]);
    EXPECT_THROW(plan_morning(needs), std::invalid_argument);
}

}  // namespace
}  // namespace quarterturn
