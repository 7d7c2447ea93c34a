#include "indexer/record/shot_list.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace quarterturn {
namespace {

std::set<std::string> texts_of(Need need) {
    std::set<std::string> texts;
    for (const ShotLine& line : default_shot_list()) {
        if (line.need == need) texts.insert(shot_text(line.shot));
    }
    return texts;
}

TEST(DefaultShotList, AsksForBeforeAndAfterFromTheFourQuarters) {
    EXPECT_EQ(
        texts_of(Need::required),
        (std::set<std::string>{"before, left", "before, front", "before, right", "before, back",
                               "after, left", "after, front", "after, right", "after, back"}));
}

TEST(DefaultShotList, OffersTheFurtherAnglesOfTheFinishedLook) {
    EXPECT_EQ(texts_of(Need::nice_to_have),
              (std::set<std::string>{"after, crown", "after, left three-quarter",
                                     "after, right three-quarter", "after, detail"}));
}

TEST(DefaultShotList, AsksForNothingTwice) {
    EXPECT_EQ(default_shot_list().size(), 12U);
    EXPECT_EQ(texts_of(Need::required).size() + texts_of(Need::nice_to_have).size(), 12U);
}

TEST(ShotListLines, LineForAShotThatIsThereChangesItInItsPlace) {
    ShotList list = default_shot_list();
    const Shot first = list.front().shot;
    set_line(list, {first, Need::nice_to_have});
    EXPECT_EQ(list.size(), default_shot_list().size());
    EXPECT_EQ(list.front(), (ShotLine{first, Need::nice_to_have}));
}

TEST(ShotListLines, NewLineGoesToTheEnd) {
    ShotList list = default_shot_list();
    const ShotLine during{{Stage::during, Angle::back}, Need::required};
    set_line(list, during);
    EXPECT_EQ(list.size(), default_shot_list().size() + 1);
    EXPECT_EQ(list.back(), during);
}

TEST(ShotListLines, DroppingSaysWhetherTheLineWasThere) {
    ShotList list = default_shot_list();
    EXPECT_TRUE(drop_line(list, {Stage::after, Angle::crown}));
    EXPECT_FALSE(drop_line(list, {Stage::after, Angle::crown}));
    EXPECT_EQ(list.size(), default_shot_list().size() - 1);
}

}  // namespace
}  // namespace quarterturn
