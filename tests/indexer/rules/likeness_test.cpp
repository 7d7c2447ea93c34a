#include "indexer/rules/likeness.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>

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
                  std::array{candidate(1, 1, {}, hair(9, 90)), candidate(2, 2, {}, hair(4, 200)),
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
        std::array{
            candidate(1, 1, {{Fact::colour, "black"}, {Fact::family, "plait"}}, hair(4, 200)),
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
                  std::array{candidate(1, 1, {}, hair(6, 150)), candidate(2, 1, {}, hair(4, 198)),
                             candidate(3, 1, {}, hair(5, 180))});
    EXPECT_EQ(numbers(found), std::vector<std::int64_t>{2});
}

TEST(MoreLike, LeavesOutWhatCannotBeCompared) {
    EXPECT_TRUE(more_like({}, hair(4, 200), std::array{candidate(1, 1, low_bun)}).empty());
    EXPECT_TRUE(
        more_like(low_bun, {}, std::array{candidate(1, 1, {{Fact::family, "plait"}})}).empty());
    const auto by_facts = more_like(low_bun, hair(4, 200), std::array{candidate(1, 1, low_bun)});
    ASSERT_EQ(by_facts.size(), 1U) << "not measured, but said";
    EXPECT_GE(by_facts.front().unlikeness, 2);
}

HairLook any_hair() {
    return *rc::gen::inRange(0, 5) == 0
               ? HairLook{}
               : hair(*rc::gen::inRange<std::uint8_t>(0, 38), *rc::gen::arbitrary<std::uint8_t>());
}

LookFacts any_facts() {
    LookFacts facts;
    for (const Fact fact : {Fact::colour, Fact::family, Fact::parting}) {
        const auto value = *rc::gen::element<std::string>("", "one", "two");
        if (!value.empty()) facts.push_back({fact, value});
    }
    return facts;
}

RC_GTEST_PROP(MoreLike, TheFirstFewAreTheFirstOfAllAndFactsMakeNoneMoreAlike, ()) {
    std::vector<LikeCandidate> candidates;
    for (int left = *rc::gen::inRange(0, 30); left > 0; --left) {
        candidates.push_back(candidate(left, *rc::gen::inRange(1, 12), any_facts(), any_hair()));
    }
    const HairLook own = any_hair();
    const LookFacts facts = any_facts();
    const auto all = more_like(facts, own, candidates);
    const auto few = more_like(facts, own, candidates, 3);
    RC_ASSERT(few.size() == std::min<std::size_t>(3, all.size()));
    for (std::size_t i = 0; i < few.size(); ++i) {
        RC_ASSERT(few[i].pair == all[i].pair);
        RC_ASSERT(few[i].reasons == all[i].reasons);
    }
    const auto least = order_by_least_unlikeness(own, candidates);
    RC_ASSERT(std::ranges::is_sorted(least));
    RC_ASSERT(least.size() == candidates.size());
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        for (const LikePair& like : more_like(facts, own, std::span(candidates).subspan(i, 1))) {
            RC_ASSERT(like.unlikeness >= least[i]);
        }
    }
}

}  // namespace
}  // namespace quarterturn
