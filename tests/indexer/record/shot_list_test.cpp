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

}  // namespace
}  // namespace quarterturn
