#include "indexer/record/count_text.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

TEST(CountText, SpeaksOfOneAndOfMany) {
    EXPECT_EQ(count_text(0, "photo"), "0 photos");
    EXPECT_EQ(count_text(1, "photo"), "1 photo");
    EXPECT_EQ(count_text(2, "photo"), "2 photos");
    EXPECT_EQ(count_text(2, "body", "bodies"), "2 bodies");
    EXPECT_EQ(count_text(999, "photo"), "999 photos");
    EXPECT_EQ(count_text(250000, "photo"), "250,000 photos");
}

}  // namespace
}  // namespace quarterturn
