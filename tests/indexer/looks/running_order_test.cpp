#include "indexer/looks/running_order.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Step step(int minutes, std::optional<int> waiting = {}) {
    Step result;
    result.words = "work";
    result.minutes = minutes;
    result.waiting_minutes = waiting;
    return result;
}

TEST(ChairWorkOfARecipe, IsDividedWhereTheHairWaitsLongest) {
    Recipe recipe;
    EXPECT_FALSE(chair_work(recipe));
    recipe.build = {step(20), step(2, 15), step(40)};
    recipe.setting.may_be_left_minutes = 90;
    EXPECT_EQ(chair_work(recipe), (ChairWork{22, 15, 90, 40}));
    recipe.hands_on_minutes = 70;  // eight of them before the steps
    EXPECT_EQ(chair_work(recipe), (ChairWork{30, 15, 90, 40}));
    recipe.build[1].setting.cooling_minutes = 25;
    recipe.build[1].setting.may_be_left_minutes = 10;
    EXPECT_EQ(chair_work(recipe), (ChairWork{30, 25, 25, 40}));
}

TEST(ChairWorkOfARecipe, StaysWithHerWhereNothingTellsWhenItWaits) {
    Recipe recipe;
    recipe.hands_on_minutes = 30;
    recipe.waiting_minutes = 10;
    EXPECT_EQ(chair_work(recipe), (ChairWork{40, 0, 0, 0}));
    recipe.build = {step(10, 5), step(10, 20), step(10)};
    recipe.hands_on_minutes = {};
    EXPECT_EQ(chair_work(recipe), (ChairWork{25, 20, usual_may_be_left, 10}));
}

class MorningOfAWedding : public testing::Test, public ExampleLibrary {
  protected:
    MorningOfAWedding() {
        aunt = library.clients().add(client_called("Aud Vale"));
        Wedding day = *library.weddings().find(wedding);
        day.party.push_back({aunt, "aunt"});
        library.weddings().change(day);
        Recipe recipe;
        recipe.build = {step(22, 15), step(43)};
        library.recipes().save(look, recipe, at("2026-11-07T12:00"));
    }
    void give_the_aunt(int minutes) {
        Morning morning = library.mornings().of(wedding);
        wish_of(morning, aunt).work = ChairWork{.before = minutes};
        library.mornings().save(wedding, morning);
    }
    ClientId aunt;
};

TEST_F(MorningOfAWedding, NeedsMinutesAndATimeOfEach) {
    const WeddingMorning morning = wedding_morning(library, wedding);
    ASSERT_EQ(morning.needs.clients.size(), 1U);
    EXPECT_EQ(morning.needs.clients[0].work, (ChairWork{22, 15, usual_may_be_left, 43}));
    EXPECT_EQ(morning.needs.clients[0].ready_by, 750);
    EXPECT_EQ(morning.looks, std::vector<std::string>{"low twisted bun"});
    ASSERT_EQ(morning.cannot.size(), 1U);
    EXPECT_NE(morning.cannot[0].find("Aud Vale has no look"), std::string::npos);
    EXPECT_EQ(morning.gaps, (std::vector<MorningGap>{{aunt, true, std::nullopt}}));
    EXPECT_THROW(wedding_morning(library, WeddingId{99}), StoreError);
}

TEST_F(MorningOfAWedding, SaysWhatCountsWhereNothingTellsHowLongASetMayBeLeft) {
    EXPECT_EQ(wedding_morning(library, wedding).assumed,
              "Nothing says how long a set may be left (Mira Okonjo-Lindqvist): 60 minutes count.");
    Recipe recipe;
    recipe.build = {step(22, 15), step(43)};
    recipe.setting.may_be_left_minutes = 90;
    library.recipes().save(look, recipe, at("2026-11-08T12:00"));
    EXPECT_EQ(wedding_morning(library, wedding).assumed, "");
}

TEST_F(MorningOfAWedding, ALookWithoutMinutesIsNamedWithItsRecipe) {
    library.recipes().save(look, Recipe{}, at("2026-11-08T12:00"));
    const WeddingMorning morning = wedding_morning(library, wedding);
    ASSERT_EQ(morning.gaps.size(), 2U);
    EXPECT_EQ(morning.gaps[0].look, look);
}

TEST_F(MorningOfAWedding, AFinishIsMovedAlone) {
    const MorningPlan best = plan_of(wedding_morning(library, wedding));
    keep_move(library, wedding_morning(library, wedding), mira, 730, {}, SeatPart::finish);
    const MorningPlan changed = plan_of(wedding_morning(library, wedding));
    EXPECT_EQ(changed.seats[0], best.seats[0]);
    EXPECT_EQ(changed.seats[1].begins, 730);
}

TEST_F(MorningOfAWedding, AChangeByHandIsKeptWithItsConsequences) {
    give_the_aunt(30);
    const MorningPlan best = plan_of(wedding_morning(library, wedding));
    EXPECT_EQ(best.consequences.late_in_all, 0);
    EXPECT_FALSE(best.by_hand);
    keep_move(library, wedding_morning(library, wedding), aunt, 740, {});
    reopen();
    const MorningPlan changed = plan_of(wedding_morning(library, wedding));
    EXPECT_TRUE(changed.by_hand);
    EXPECT_EQ(changed.consequences.late_in_all, 20);
    EXPECT_THROW(keep_move(library, wedding_morning(library, wedding), aunt, 700, 1), StoreError);
    give_the_aunt(5);  // the plan keeps her time, the minutes are today's
    EXPECT_EQ(ready_at(aunt, plan_of(wedding_morning(library, wedding)).seats), 745);
}

}  // namespace
}  // namespace quarterturn
