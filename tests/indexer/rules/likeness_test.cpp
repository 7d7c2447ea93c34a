#include "indexer/rules/likeness.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

using Reasons = std::vector<std::string>;

HairLook hair(std::uint8_t colour, std::uint8_t shape) {
    HairLook look;
    look.colour.assign(38, 0);
    look.colour[colour] = 255;
    look.texture.assign(288, 20);
    look.shape.assign(144, shape);
    return look;
}

LikeCandidate candidate(std::int64_t pair, std::int64_t look, const LookFacts& facts,
                        const HairLook& own = {}) {
    return {PairId{pair}, LookId{look}, facts, own};
}

std::vector<std::int64_t> numbers(const std::vector<LikePair>& pairs) {
    std::vector<std::int64_t> result;
    for (const LikePair& pair : pairs) result.push_back(pair.pair.value);
    return result;
}

const LookFacts low_bun{{Fact::colour, "brown"}, {Fact::family, "low bun"}};

TEST(MoreLike, OrdersByPictureAndSaysWhatIsAlike) {
    const auto found =
        more_like({}, hair(4, 200),
                  {candidate(1, 1, {}, hair(9, 90)), candidate(2, 2, {}, hair(4, 200)),
                   candidate(3, 3, {}, hair(5, 190))});
    EXPECT_EQ(numbers(found), (std::vector<std::int64_t>{2, 3, 1}));
    EXPECT_EQ(found.front().unlikeness, 0);
    EXPECT_EQ(found.front().reasons, (Reasons{"the outline is alike", "the hair runs the same way",
                                              "the hair has a like colour"}));
    EXPECT_EQ(found.back().reasons, Reasons{"the hair runs the same way"});
}

TEST(MoreLike, CountsFactsThatAreSharedAndThatDiffer) {
    const auto found = more_like(
        low_bun, hair(4, 200),
        {candidate(1, 1, {{Fact::colour, "black"}, {Fact::family, "plait"}}, hair(4, 200)),
         candidate(2, 2, {{Fact::colour, "brown"}, {Fact::family, "low bun"}}, hair(4, 200)),
         candidate(3, 3, {{Fact::parting, "left"}}, hair(4, 200))});
    EXPECT_EQ(numbers(found), (std::vector<std::int64_t>{2, 3, 1}));
    EXPECT_EQ(found.front().reasons.front(), "brown hair as well");
    EXPECT_EQ(found.front().reasons.at(1), "low bun as well");
    EXPECT_EQ(found.back().unlikeness, 1) << "two facts differ, half a step each";
}

TEST(MoreLike, TakesTheLikestPairOfEachLook) {
    const auto found =
        more_like({}, hair(4, 200),
                  {candidate(1, 1, {}, hair(6, 150)), candidate(2, 1, {}, hair(4, 198)),
                   candidate(3, 1, {}, hair(5, 180))});
    EXPECT_EQ(numbers(found), std::vector<std::int64_t>{2});
}

TEST(MoreLike, LeavesOutWhatCannotBeCompared) {
    EXPECT_TRUE(more_like({}, hair(4, 200), {candidate(1, 1, low_bun)}).empty());
    EXPECT_TRUE(more_like(low_bun, {}, {candidate(1, 1, {{Fact::family, "plait"}})}).empty());
    const auto by_facts = more_like(low_bun, hair(4, 200), {candidate(1, 1, low_bun)});
    ASSERT_EQ(by_facts.size(), 1U) << "not measured, but said";
    EXPECT_GE(by_facts.front().unlikeness, 2);
}

}  // namespace
}  // namespace quarterturn
