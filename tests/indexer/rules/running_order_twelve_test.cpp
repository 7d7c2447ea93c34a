// Parties of up to twelve who need not wait, against an exact method that is written another way.

#include <gtest/gtest.h>

#include <random>

#include "tests/indexer/rules/running_order_parties.h"
#include "tests/indexer/rules/running_order_without_waiting.h"

namespace quarterturn {
namespace {

// Tight and easy ones. A set that neither cools nor may be left is one go told in two parts.
MorningNeeds party_without_waiting(unsigned seed) {
    std::mt19937 random(seed);
    const auto pick = [&](int least, int most) {
        return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
    };
    MorningNeeds needs;
    const int clients = pick(7, 12);
    needs.stylists.resize(static_cast<std::size_t>(pick(1, most_stylists)));
    for (StylistHours& hours : needs.stylists) hours.arrives = 360 + 10 * pick(0, 3);
    const int minutes_each = 35 * clients / static_cast<int>(needs.stylists.size());
    for (int i = 1; i <= clients; ++i) {
        const int before = pick(15, 35);
        const ChairWork work =
            pick(0, 2) > 0 ? in_one_go(before + 10) : ChairWork{before, 0, 0, pick(5, 20)};
        needs.clients.push_back(client(i, work, 420 + pick(0, minutes_each * 6 / 5)));
    }
    needs.clients.back().last = needs.stylists.size() <= 2 && pick(0, 1) == 1;
    return needs;
}

TEST(RunningOrderOfManyWithoutWaiting, IsAsLittleLateAndBeginsAsLateAsCanBe) {
    int late = 0;
    constexpr int large_parties = 60;
    for (unsigned seed = 1; seed <= large_parties; ++seed) {
        const MorningNeeds needs = party_without_waiting(seed);
        const RunningOrder order = plan_morning(needs);
        const LeastLateness found{order.late_in_all, order.worst};
        ASSERT_EQ(found, least_without_waiting(needs, 0)) << seed;
        ASSERT_TRUE(order.proven) << seed;
        ASSERT_EQ(found, least_without_waiting(needs, order.begins)) << seed;
        ASSERT_LT(found, least_without_waiting(needs, order.begins + 1)) << seed;
        late += order.late_in_all > 0 ? 1 : 0;
    }
    EXPECT_GT(late, large_parties / 10);  // both kinds of morning are among them
    EXPECT_LT(late, large_parties * 9 / 10);
}

}  // namespace
}  // namespace quarterturn
