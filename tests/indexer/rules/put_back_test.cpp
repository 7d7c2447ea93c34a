#include "indexer/rules/put_back.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

TEST(PutBack, WhatWasTakenOutComesBackBesideWhatWasWrittenSince) {
    Recipe with;
    with.prep = {{"mousse", "two walnuts", "lengths"}};
    with.build = {{"part", {}, {}}, {"twist", {}, {}}, {"pin", {}, {}}};
    Recipe without = with;
    without.build.erase(without.build.begin() + 1);
    EXPECT_EQ(put_back(without, with, without), with);
    Recipe now = without;
    now.finish = "mist";
    now.build[0].words = "part deep";
    now.build.push_back({"press down", {}, {}});
    const Recipe again = put_back(now, with, without);
    EXPECT_EQ(again.finish, "mist");
    ASSERT_EQ(again.build.size(), 4U);
    EXPECT_EQ(again.build[0].words, "part deep");
    EXPECT_EQ(again.build[1].words, "twist");
    EXPECT_EQ(again.build[3].words, "press down");
    Recipe no_prep = with;
    no_prep.prep.clear();
    Recipe later = no_prep;
    later.finish = "mist";
    EXPECT_EQ(put_back(later, with, no_prep).prep, with.prep);
    EXPECT_EQ(put_back(later, with, no_prep).finish, "mist");
}

}  // namespace
}  // namespace quarterturn
