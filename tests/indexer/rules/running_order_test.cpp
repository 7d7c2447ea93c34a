#include "indexer/rules/running_order.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
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
        const int clients = stylists == 1 ? pick(1, 6) : pick(1, stylists == 2 ? 4 : 3);
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

// A bride with a set of 22 + 43 minutes and two more, all ready by 12:30 (750).
MorningNeeds three_by_half_past_twelve() {
    MorningNeeds needs;
    needs.clients = {client(1, {22, 15, 90, 43}, 750), client(2, {20, 15, 60, 25}, 750),
                     client(3, in_one_go(40), 720)};
    needs.clients[0].last = true;
    needs.stylists.resize(1);
    return needs;
}

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

// From 6 o'clock: 1 is set until 6:22 and finished 6:40 to 7:23, 2 is done by the second stylist.
std::vector<Seat> by_hand() {
    return {{ClientId{1}, SeatPart::set, 0, 360, 382},
            {ClientId{1}, SeatPart::finish, 0, 400, 443},
            {ClientId{2}, SeatPart::set, 1, 360, 380},
            {ClientId{2}, SeatPart::finish, 1, 395, 420},
            {ClientId{3}, SeatPart::set, 1, 420, 460}};
}

class ChangedByHand : public testing::Test {
  protected:
    ChangedByHand() {
        needs.clients[0].last = false;
        needs.stylists.resize(2);
    }
    std::vector<std::string> broken(const std::vector<Seat>& seats) {
        return check_morning(needs, seats).broken;
    }
    MorningNeeds needs = three_by_half_past_twelve();
};

using Sentences = std::vector<std::string>;

TEST_F(ChangedByHand, APlanThatKeepsEveryRuleHasNothingSaidOfIt) {
    EXPECT_EQ(broken(by_hand()), Sentences{});
    EXPECT_EQ(check_morning(needs, by_hand()).late_in_all, 0);
}

TEST_F(ChangedByHand, SaysWhoIsLateByHowMuch) {
    const auto seats = moved(by_hand(), ClientId{3}, 690, {});
    EXPECT_EQ(check_morning(needs, seats).lateness,
              Sentences{"Client 3 is ready at 12:10, 10 minutes late."});
    EXPECT_EQ(check_morning(needs, seats).late, (std::vector<int>{0, 0, 10}));
}

TEST_F(ChangedByHand, SaysWhoIsInTwoPlacesAtOnce) {
    EXPECT_EQ(broken(moved(by_hand(), ClientId{3}, 410, {})),
              Sentences{"Stylist 2 has two at once from 06:50 on: Client 2 and Client 3."});
    EXPECT_EQ(broken(moved(by_hand(), ClientId{3}, 380, 0)),
              (Sentences{"Stylist 1 has two at once from 06:20 on: Client 1 and Client 3.",
                         "Stylist 1 has two at once from 06:40 on: Client 3 and Client 1."}));
}

TEST_F(ChangedByHand, SaysWhichSetWaitsTooShortOrTooLong) {
    auto seats = by_hand();
    seats[1] = {ClientId{1}, SeatPart::finish, 0, 392, 435};
    EXPECT_EQ(broken(seats),
              Sentences{"The set of Client 1 has 10 minutes to cool and needs 15 minutes."});
    seats[1] = {ClientId{1}, SeatPart::finish, 0, 480, 523};
    EXPECT_EQ(broken(seats), Sentences{"The set of Client 1 is left for 98 minutes and may be "
                                       "left for 90 minutes at most."});
}

TEST_F(ChangedByHand, SaysWhichHoursAndOrdersAreNotKept) {
    needs.stylists[0].breaks = {{405, 410}};
    needs.stylists[1].arrives = 370;
    needs.clients[2].first = true;
    needs.clients[1].last = true;
    EXPECT_EQ(broken(by_hand()),
              (Sentences{"Stylist 2 begins Client 2 at 06:00 and comes only at 06:10.",
                         "Stylist 1 works on Client 1 in the break from 06:45 to 06:50.",
                         "Client 2 must be last, and Client 1 is ready after her.",
                         "Client 2 must be last, and Client 3 is ready after her.",
                         "Client 3 must be first, and Client 1 is begun before her.",
                         "Client 3 must be first, and Client 2 is begun before her."}));
}

TEST_F(ChangedByHand, SaysWhoHasNoPlaceOrAStylistWhoIsNotThere) {
    auto seats = by_hand();
    seats.pop_back();
    seats[1].stylist = 2;
    EXPECT_EQ(broken(seats),
              (Sentences{"Client 1 is set by stylist 1 and finished by stylist 3: who wound a set "
                         "should finish it.",
                         "Client 3 has no place in the plan.",
                         "Client 1 is given to stylist 3, and there are 2."}));
}

}  // namespace
}  // namespace quarterturn
