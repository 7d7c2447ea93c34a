#include "indexer/rules/running_order_check.h"

#include <gtest/gtest.h>

#include "tests/indexer/rules/running_order_parties.h"

namespace quarterturn {
namespace {

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

TEST_F(ChangedByHand, ASetTakesItsFinishAlongAndAFinishMovesAlone) {
    const auto later = moved_part(by_hand(), ClientId{1}, SeatPart::set, 370, {});
    EXPECT_EQ(later[0].begins, 370);
    EXPECT_EQ(later[1].begins, 410);
    const auto finish = moved_part(by_hand(), ClientId{1}, SeatPart::finish, 405, {});
    EXPECT_EQ(finish[0], by_hand()[0]);
    EXPECT_EQ(finish[1], (Seat{ClientId{1}, SeatPart::finish, 0, 405, 448}));
    const auto other = moved_part(by_hand(), ClientId{1}, SeatPart::finish, 400, 1);
    EXPECT_EQ(other[0].stylist, 1);  // who wound a set should finish it
    EXPECT_EQ(other[0].begins, 360);
    EXPECT_EQ(other[1].stylist, 1);
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
