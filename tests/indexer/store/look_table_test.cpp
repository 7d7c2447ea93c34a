#include "indexer/store/look_table.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class LookTableTest : public testing::Test, public ExampleLibrary {
  protected:
    Look another_look(ClientId client, const std::string& name) {
        Look other;
        other.client = client;
        other.name = name;
        other.worn = Worn::evening;
        other.id = library.looks().add(other);
        return other;
    }
};

const ShotList short_list{{{Stage::after, Angle::crown}, Need::nice_to_have},
                          {{Stage::during, Angle::back}, Need::required}};
const ShotList other_list{{{Stage::before, Angle::front}, Need::required}};
const Shot back{Stage::after, Angle::back};
const Shot front{Stage::after, Angle::front};

TEST_F(LookTableTest, KeepsALookWithItsSittingsInOrder) {
    Sitting day = library.sittings().find(trial).value();
    const SittingId second = library.sittings().add(day);
    Look bun = library.looks().find(look).value();
    bun.sittings = {second, trial};
    bun.worn = Worn::other;
    library.looks().change(bun);
    reopen();
    EXPECT_EQ(library.looks().find(look), bun);
    EXPECT_EQ(library.looks().of_sitting(second), std::vector{bun});
    bun.sittings = {trial};
    library.looks().change(bun);
    EXPECT_TRUE(library.looks().of_sitting(second).empty());
    EXPECT_EQ(library.looks().of_sitting(trial), std::vector{bun})
        << "one sitting asked for does not shorten the look's list";
}

TEST_F(LookTableTest, ListsByClientsNameThenAsAdded) {
    const ClientId zoe = library.clients().add(client_called("Zoe"));
    const ClientId ada = library.clients().add(client_called("ada"));
    const Look let_down = another_look(zoe, "let down");
    const Look braid = another_look(ada, "braid");
    const Look again = another_look(mira, "again");
    std::vector<LookId> ids;
    for (const Look& each : library.looks().all()) ids.push_back(each.id);
    EXPECT_EQ(ids, (std::vector{braid.id, look, again.id, let_down.id}));
    EXPECT_EQ(library.looks().names().back(),
              (LookName{again.id, "again", "Mira Okonjo-Lindqvist"}));
    const std::vector some{again.id, LookId{999}};
    EXPECT_EQ(library.looks().names_of(some), std::vector{library.looks().names().back()});
    EXPECT_EQ(library.looks().of_client(ada), std::vector{braid});
    EXPECT_EQ(library.looks().named("LET DOWN"), std::vector{let_down});
}

TEST_F(LookTableTest, RefusesASittingTwiceAndAnEmptyName) {
    Look bun = library.looks().find(look).value();
    bun.sittings = {trial, trial};
    EXPECT_THROW(library.looks().change(bun), StoreError);
    bun.sittings.clear();
    bun.name = "  ";
    EXPECT_THROW(library.looks().add(bun), StoreError);
    EXPECT_EQ(library.looks().all().size(), 1U);
}

TEST_F(LookTableTest, AsksForTheShotsOfTheLookElseHersElseTheCommonOnes) {
    EXPECT_EQ(library.looks().shot_list(look), default_shot_list());
    library.looks().set_own_default_shot_list(other_list);
    EXPECT_EQ(library.looks().shot_list(look), other_list);
    library.looks().set_shot_list(look, short_list);
    reopen();
    EXPECT_EQ(library.looks().shot_list(look), short_list);
    EXPECT_EQ(library.looks().own_default_shot_list(), other_list);
    EXPECT_EQ(library.looks().shot_list(another_look(mira, "let down").id), other_list);
    library.looks().set_own_default_shot_list(short_list);
    EXPECT_EQ(library.looks().own_default_shot_list(), short_list);
}

TEST_F(LookTableTest, RefusesAShotListWithALineTwice) {
    library.looks().set_shot_list(look, short_list);
    EXPECT_THROW(
        library.looks().set_shot_list(
            look, {{back, Need::required}, {front, Need::required}, {back, Need::nice_to_have}}),
        StoreError);
    EXPECT_EQ(library.looks().shot_list(look), short_list);
}

TEST_F(LookTableTest, KeepsWaiversWithTheirNewestReason) {
    library.looks().waive(look, {front, "she declined"});
    library.looks().waive(look, {back, "no time"});
    library.looks().waive(look, {back, "the veil was pinned already"});
    reopen();
    EXPECT_EQ(
        library.looks().waivers(look),
        (std::vector<Waiver>{{front, "she declined"}, {back, "the veil was pinned already"}}));
    library.looks().take_back_waiver(look, front);
    EXPECT_EQ(library.looks().waivers(look),
              (std::vector<Waiver>{{back, "the veil was pinned already"}}));
}

TEST_F(LookTableTest, WaivesNothingWithoutAReason) {
    EXPECT_THROW(library.looks().waive(look, {back, ""}), StoreError);
    EXPECT_THROW(library.looks().waive(look, {back, " \n"}), StoreError);
    EXPECT_THROW(library.looks().waive(look, {{Stage::during, Angle::detail}, "no time"}),
                 StoreError);
    EXPECT_THROW(library.looks().waive(LookId{77}, {back, "no time"}), StoreError);
    EXPECT_THROW(library.looks().take_back_waiver(look, back), StoreError);
    EXPECT_TRUE(library.looks().waivers(look).empty());
}

}  // namespace
}  // namespace quarterturn
