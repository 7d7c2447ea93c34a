#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <random>

#include "indexer/rules/running_order_check.h"
#include "tests/indexer/rules/running_order_oracle.h"
#include "tests/indexer/rules/running_order_parties.h"

namespace quarterturn {
namespace {

// Small numbers, so that every minute can be tried; the same in every run.
class RandomParty {
  public:
    explicit RandomParty(unsigned seed) : random_(seed) {}

    MorningNeeds needs() {
        MorningNeeds needs;
        const int stylists = pick(1, most_stylists);
        for (int i = 0; i < stylists; ++i) needs.stylists.push_back(hours());
        const int clients = pick(1, 6);
        for (int i = 1; i <= clients; ++i) {
            needs.clients.push_back(client(i, work(), pick(4, 10 + clients * 6 / stylists)));
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
        for (int more = pick(-1, 2); more > 0; --more) {  // two may overlap
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

constexpr int parties = 520;
constexpr long enough_steps = 50'000'000;

TEST(RunningOrderAgainstEveryMinute, IsAsLittleLateAndBeginsAsLateAsCanBe) {
    int late = 0;
    for (unsigned seed = 1; seed <= parties; ++seed) {
        const MorningNeeds needs = RandomParty(seed).needs();
        const RunningOrder order = plan_morning(needs, enough_steps);
        const BestMorning oracle(needs);
        const int most = order.late_in_all;
        const LeastLateness found{order.late_in_all, order.worst};
        ASSERT_TRUE(order.proven) << seed;
        ASSERT_EQ(found, oracle.least(0, most)) << seed << "\n" << in_words(needs);
        ASSERT_LT(found, oracle.least(order.begins + 1, most)) << seed << "\n" << in_words(needs);
        ASSERT_EQ(check_morning(needs, order.seats).broken, std::vector<std::string>{}) << seed;
        ASSERT_EQ(check_morning(needs, order.seats).late, order.late) << seed;
        late += order.late_in_all > 0 ? 1 : 0;
    }
    EXPECT_GT(late, parties / 10);  // both kinds of morning are among them
    EXPECT_LT(late, parties * 9 / 10);
}

// A morning in real minutes, up to twelve clients and four stylists.
rc::Gen<ChairWork> any_work() {
    return rc::gen::map(rc::gen::tuple(rc::gen::inRange(5, 60), rc::gen::inRange(0, 30),
                                       rc::gen::inRange(0, 60), rc::gen::inRange(0, 50)),
                        [](const auto& minutes) {
                            const auto& [before, cooling, more, after] = minutes;
                            if (after < 5) return in_one_go(before);
                            return ChairWork{before, cooling, cooling + more, after};
                        });
}

StylistHours any_hours() {
    StylistHours hours{.arrives = *rc::gen::inRange(300, 420), .breaks = {}};
    for (int more = *rc::gen::inRange(0, 3); more > 0; --more) {
        const int begins = *rc::gen::inRange(360, 720);
        hours.breaks.push_back({begins, begins + *rc::gen::inRange(5, 45)});
    }
    return hours;
}

MorningNeeds any_morning() {
    MorningNeeds needs;
    const int clients = *rc::gen::inRange(1, most_in_the_chair + 1);
    const int stylists = *rc::gen::inRange(1, most_stylists + 1);
    for (int i = 0; i < stylists; ++i) needs.stylists.push_back(any_hours());
    for (int i = 1; i <= clients; ++i) {
        needs.clients.push_back(client(i, *any_work(), *rc::gen::inRange(480, 800)));
        needs.clients.back().arrives = *rc::gen::inRange(0, 540);
    }
    needs.clients.front().first = *rc::gen::arbitrary<bool>();
    needs.clients.back().last = clients > 1 && *rc::gen::arbitrary<bool>();
    return needs;
}

std::vector<Seat> seats_of(ClientId client, const std::vector<Seat>& seats) {
    std::vector<Seat> own;
    for (const Seat& seat : seats) {
        if (seat.client == client) own.push_back(seat);
    }
    return own;
}

void refuse_two_places_at_once(const std::vector<Seat>& seats) {
    for (const Seat& one : seats) {
        for (const Seat& other : seats) {
            if (one == other || (one.stylist != other.stylist && one.client != other.client)) {
                continue;
            }
            RC_ASSERT(one.ends <= other.begins || other.ends <= one.begins);
        }
    }
}

void refuse_wrong_parts(const MorningClient& client, const std::vector<Seat>& own) {
    const ChairWork& work = client.work;
    RC_ASSERT(own.size() == (work.in_two_parts() ? 2U : 1U));
    RC_ASSERT(own.front().part == SeatPart::set);
    RC_ASSERT(own.front().ends - own.front().begins == work.before);
    RC_ASSERT(own.front().begins >= client.arrives);
    if (!work.in_two_parts()) return;
    RC_ASSERT(own.back().part == SeatPart::finish);
    RC_ASSERT(own.back().stylist == own.front().stylist);
    RC_ASSERT(own.back().ends - own.back().begins == work.after);
    const int wait = own.back().begins - own.front().ends;
    RC_ASSERT(wait >= work.cooling);
    RC_ASSERT(wait <= work.may_be_left);
}

void refuse_wrong_hours(const StylistHours& hours, const Seat& seat) {
    RC_ASSERT(seat.begins >= hours.arrives);
    for (const Break& pause : hours.breaks) {
        RC_ASSERT(seat.ends <= pause.begins || seat.begins >= pause.ends);
    }
}

void refuse_wrong_order(const MorningNeeds& needs, const RunningOrder& order) {
    int ends = 0;
    for (const Seat& seat : order.seats) ends = std::max(ends, seat.ends);
    for (const MorningClient& client : needs.clients) {
        const auto own = seats_of(client.client, order.seats);
        if (client.first) RC_ASSERT(own.front().begins == order.begins);
        if (client.last) RC_ASSERT(own.back().ends == ends);
    }
}

RC_GTEST_PROP(RunningOrderOfTwelve, KeepsEveryRule, ()) {
    const MorningNeeds needs = any_morning();
    const RunningOrder order = plan_morning(needs, 2000);
    refuse_two_places_at_once(order.seats);
    for (std::size_t i = 0; i < needs.clients.size(); ++i) {
        const auto own = seats_of(needs.clients[i].client, order.seats);
        refuse_wrong_parts(needs.clients[i], own);
        RC_ASSERT(order.late[i] == std::max(0, own.back().ends - needs.clients[i].ready_by));
    }
    for (const Seat& seat : order.seats) {
        refuse_wrong_hours(needs.stylists[static_cast<std::size_t>(seat.stylist)], seat);
        RC_ASSERT(seat.begins >= order.begins);
    }
    refuse_wrong_order(needs, order);
    RC_ASSERT(check_morning(needs, order.seats).broken.empty());
}

}  // namespace
}  // namespace quarterturn
