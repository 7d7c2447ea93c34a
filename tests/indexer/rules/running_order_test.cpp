#include "indexer/rules/running_order.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <random>
#include <stdexcept>

#include "indexer/rules/running_order_check.h"
#include "tests/indexer/rules/running_order_oracle.h"

namespace quarterturn {
namespace {

MorningClient client(int number, ChairWork work, int ready_by) {
    MorningClient result;
    result.client = ClientId{number};
    result.name = "Client " + std::to_string(number);
    result.work = work;
    result.ready_by = ready_by;
    return result;
}

ChairWork in_one_go(int minutes) {
    return {minutes, 0, 0, 0};
}

// Small numbers, so that every minute can be tried; the same in every run.
class RandomParty {
  public:
    explicit RandomParty(unsigned seed) : random_(seed) {}

    MorningNeeds needs() {
        MorningNeeds needs;
        const int stylists = pick(1, 10) <= 6 ? 1 : pick(2, 3);
        for (int i = 0; i < stylists; ++i) needs.stylists.push_back(hours());
        const int clients = stylists == 1 ? pick(1, 6) : pick(1, stylists == 2 ? 5 : 4);
        for (int i = 1; i <= clients; ++i) {
            needs.clients.push_back(client(i, work(), pick(2, 4 + clients * 5 / stylists)));
            if (pick(1, 3) == 1) needs.clients.back().arrives = pick(0, 5);
        }
        if (pick(1, 3) == 1) needs.clients.front().first = true;
        if (pick(1, 3) == 1 && clients > 1) needs.clients.back().last = true;
        return needs;
    }

  private:
    int pick(int least, int most) {
        return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
    }

    StylistHours hours() {
        StylistHours hours{.arrives = pick(0, 2), .breaks = {}};
        if (pick(1, 3) == 1) {
            const int begins = pick(2, 8);
            hours.breaks.push_back({begins, begins + pick(1, 2)});
        }
        return hours;
    }

    ChairWork work() {
        if (pick(1, 3) == 1) return in_one_go(pick(1, 5));
        const int cooling = pick(0, 4);
        return {pick(1, 3), cooling, cooling + pick(0, 4), pick(1, 3)};
    }

    std::mt19937 random_;
};

std::string in_words(const MorningNeeds& needs) {
    std::string text;
    for (const StylistHours& hours : needs.stylists) {
        text += "from " + std::to_string(hours.arrives);
        for (const Break& pause : hours.breaks) {
            text += " without " + std::to_string(pause.begins) + "-" + std::to_string(pause.ends);
        }
        text += "\n";
    }
    for (const MorningClient& one : needs.clients) {
        text += std::to_string(one.work.before) + " wait " + std::to_string(one.work.cooling) +
                "-" + std::to_string(one.work.may_be_left) + " then " +
                std::to_string(one.work.after) + ", by " + std::to_string(one.ready_by) +
                ", comes " + std::to_string(one.arrives) + (one.first ? " first" : "") +
                (one.last ? " last" : "") + "\n";
    }
    return text;
}

constexpr int parties = 600;
constexpr long enough_steps = 50'000'000;

TEST(RunningOrderAgainstEveryMinute, IsAsLittleLateAndBeginsAsLateAsCanBe) {
    int late = 0;
    for (unsigned seed = 1; seed <= parties; ++seed) {
        const MorningNeeds needs = RandomParty(seed).needs();
        const RunningOrder order = plan_morning(needs, enough_steps);
        MinuteByMinute oracle(needs);
        const int most = order.late_in_all;
        const LeastLateness found{order.late_in_all, order.worst};
        ASSERT_TRUE(order.proven) << seed;
        ASSERT_EQ(found, oracle.least(0, most)) << seed << "\n" << in_words(needs);
        ASSERT_EQ(found, oracle.least(order.begins, most)) << seed << "\n" << in_words(needs);
        ASSERT_LT(found, oracle.least(order.begins + 1, most)) << seed << "\n" << in_words(needs);
        ASSERT_EQ(check_morning(needs, order.seats).broken, std::vector<std::string>{}) << seed;
        ASSERT_EQ(check_morning(needs, order.seats).late, order.late) << seed;
        late += order.late_in_all > 0 ? 1 : 0;
    }
    EXPECT_GT(late, parties / 10);  // both kinds of morning are among them
    EXPECT_LT(late, parties * 9 / 10);
}

}  // namespace
}  // namespace quarterturn
