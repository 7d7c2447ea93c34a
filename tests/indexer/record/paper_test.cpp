#include "indexer/record/paper.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

TEST(Paper, IsReadBackFromItsWord) {
    for (const Paper paper : all_papers) EXPECT_EQ(parse_paper(word(paper)), paper);
}

TEST(Paper, CaseDoesNotMatterAndNothingElsePasses) {
    EXPECT_EQ(parse_paper("A4"), Paper::a4);
    EXPECT_EQ(parse_paper("LETTER"), Paper::letter);
    for (const char* text : {"", "a", "a44", "A6", "A 4", "letters", "legal"}) {
        EXPECT_EQ(parse_paper(text), std::nullopt) << text;
    }
}

}  // namespace
}  // namespace quarterturn
