#include "indexer/rules/likeness.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace quarterturn {
namespace {

using Shares = HairLook::Shares;

double share_at(const Shares& shares, std::size_t at) {
    return at < shares.size() ? shares[at] / 255.0 : 0;
}

double summed_difference(const Shares& one, const Shares& other) {
    double sum = 0;
    for (std::size_t i = 0; i < std::max(one.size(), other.size()); ++i) {
        sum += std::abs(share_at(one, i) - share_at(other, i));
    }
    return sum;
}

// By how many steps what lies in one histogram would have to be carried to become the other: white
// balance and exposure shift a histogram as a whole, and little.
double carried(const Shares& one, const Shares& other, std::size_t from, std::size_t to) {
    double sum = 0;
    double held = 0;
    for (std::size_t i = from; i < to; ++i) {
        held += share_at(one, i) - share_at(other, i);
        sum += std::abs(held);
    }
    return sum;
}

struct Comparison {
    LookFacts shared;
    int differing = 0;  // facts that both have, with no value in common
};

Comparison compare_facts(const LookFacts& one, const LookFacts& other) {
    Comparison comparison;
    std::set<Fact> both, alike;
    for (const LookFact& fact : one) {
        for (const LookFact& more : other) {
            if (more.fact != fact.fact) continue;
            both.insert(fact.fact);
            if (more.value != fact.value) continue;
            alike.insert(fact.fact);
            comparison.shared.push_back(fact);
        }
    }
    comparison.differing = static_cast<int>(both.size() - alike.size());
    return comparison;
}

std::string fact_reason(const LookFact& fact) {
    switch (fact.fact) {
        case Fact::family:
            return fact.value + " as well";
        case Fact::length:
            return "hair " + fact.value + " as well";
        case Fact::parting:
            return "parting: " + fact.value;
        case Fact::accessory:
            return "accessory: " + fact.value;
        default:
            return fact.value + " hair as well";
    }
}

// What is alike; where nothing is by itself, what is most so.
std::vector<std::string> picture_reasons(const HairDistance& distance) {
    struct Part {
        double distance;
        std::string words;
        std::string most;
    };
    std::vector<Part> parts{
        {distance.shape, "the outline is alike", "shape of the hair most alike"},
        {distance.texture, "the hair runs the same way", "the way the hair runs most alike"},
        {distance.colour, "the hair has a like colour", "colour of the hair most alike"}};
    std::ranges::stable_sort(parts, {}, &Part::distance);
    if (parts.front().distance > 1) return {parts.front().most};
    std::vector<std::string> reasons;
    for (const Part& part : parts) {
        if (part.distance <= 1) reasons.push_back(part.words);
    }
    return reasons;
}

std::optional<LikePair> judge(const LookFacts& facts, const HairLook& hair,
                              const LikeCandidate& candidate) {
    constexpr double step_of_fact = 0.5;
    const Comparison comparison = compare_facts(facts, candidate.facts);
    const bool by_picture = hair.told() && candidate.hair.told();
    if (!by_picture && comparison.shared.empty()) return std::nullopt;
    LikePair like{candidate.pair, step_of_fact * comparison.differing, {}};
    for (const LookFact& fact : comparison.shared) like.reasons.push_back(fact_reason(fact));
    if (!by_picture) {
        like.unlikeness += 2;  // as unlike as another hairdo, until it is seen
        return like;
    }
    const HairDistance distance = distance_between(hair, candidate.hair);
    like.unlikeness += distance.whole();
    for (std::string& reason : picture_reasons(distance)) like.reasons.push_back(std::move(reason));
    return like;
}

}  // namespace

HairDistance distance_between(const HairLook& one, const HairLook& other) {
    constexpr std::size_t tints = 15;  // steps of each histogram of image/hair_look.cpp
    constexpr std::size_t lights = 8;
    constexpr double weight_of_light = 0.1;  // it changes with the exposure
    constexpr double usual_colour = 0.8;
    constexpr double usual_texture = 8;
    constexpr double usual_shape = 4;
    const double colour =
        carried(one.colour, other.colour, 0, tints) +
        carried(one.colour, other.colour, tints, 2 * tints) +
        weight_of_light * carried(one.colour, other.colour, 2 * tints, 2 * tints + lights);
    return {colour / usual_colour, summed_difference(one.texture, other.texture) / usual_texture,
            summed_difference(one.shape, other.shape) / usual_shape};
}

std::vector<LikePair> more_like(const LookFacts& facts, const HairLook& hair,
                                const std::vector<LikeCandidate>& candidates) {
    std::map<LookId, LikePair> likest;
    for (const LikeCandidate& candidate : candidates) {
        auto like = judge(facts, hair, candidate);
        if (!like) continue;
        const auto [place, is_new] = likest.try_emplace(candidate.look, *like);
        const bool liker = like->unlikeness < place->second.unlikeness;
        if (!is_new && liker) place->second = std::move(*like);
    }
    std::vector<LikePair> pairs;
    for (auto& [look, like] : likest) pairs.push_back(std::move(like));
    std::ranges::sort(pairs, {},
                      [](const LikePair& pair) { return std::pair(pair.unlikeness, pair.pair); });
    return pairs;
}

}  // namespace quarterturn
