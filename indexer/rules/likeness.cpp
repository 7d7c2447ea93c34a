#include "indexer/rules/likeness.h"

#include <algorithm>
#include <bitset>
#include <cmath>
#include <span>
#include <unordered_map>

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

LookFacts shared_facts(const LookFacts& one, const LookFacts& other) {
    LookFacts shared;
    for (const LookFact& fact : one) {
        for (const LookFact& more : other) {
            if (more.fact == fact.fact && more.value == fact.value) shared.push_back(fact);
        }
    }
    return shared;
}

struct Comparison {
    bool share = false;
    int differing = 0;  // facts that both have, with no value in common
};

// Asked of every candidate: without a copy of anything.
Comparison compare_facts(const LookFacts& one, const LookFacts& other) {
    std::bitset<all_facts.size()> both, alike;
    for (const LookFact& fact : one) {
        const auto number = static_cast<std::size_t>(fact.fact);
        for (const LookFact& more : other) {
            if (more.fact != fact.fact) continue;
            both.set(number);
            if (more.value == fact.value) alike.set(number);
        }
    }
    return {alike.any(), static_cast<int>(both.count() - alike.count())};
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

bool by_picture(const HairLook& hair, const LikeCandidate& candidate) {
    return hair.told() && candidate.hair.told();
}

double without_facts(const HairLook& hair, const LikeCandidate& candidate) {
    constexpr double unseen = 2;  // as unlike as another hairdo, until it is seen
    return by_picture(hair, candidate) ? distance_between(hair, candidate.hair).whole() : unseen;
}

std::optional<double> unlikeness_of(const LookFacts& facts, const HairLook& hair,
                                    const LikeCandidate& candidate) {
    constexpr double step_of_fact = 0.5;
    const Comparison comparison = compare_facts(facts, candidate.facts);
    if (!by_picture(hair, candidate) && !comparison.share) return std::nullopt;
    return step_of_fact * comparison.differing + without_facts(hair, candidate);
}

std::vector<std::string> reasons_of(const LookFacts& facts, const HairLook& hair,
                                    const LikeCandidate& candidate) {
    std::vector<std::string> reasons;
    for (const LookFact& fact : shared_facts(facts, candidate.facts)) {
        reasons.push_back(fact_reason(fact));
    }
    if (!by_picture(hair, candidate)) return reasons;
    for (std::string& reason : picture_reasons(distance_between(hair, candidate.hair))) {
        reasons.push_back(std::move(reason));
    }
    return reasons;
}

struct Likest {
    double unlikeness = 0;
    const LikeCandidate* candidate = nullptr;
};

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
                                std::span<const LikeCandidate> candidates, std::size_t at_most) {
    std::unordered_map<std::int64_t, Likest> of_looks;
    for (const LikeCandidate& candidate : candidates) {
        const auto unlikeness = unlikeness_of(facts, hair, candidate);
        if (!unlikeness) continue;
        const Likest likest{*unlikeness, &candidate};
        const auto [place, is_new] = of_looks.try_emplace(candidate.look.value, likest);
        if (!is_new && likest.unlikeness < place->second.unlikeness) place->second = likest;
    }
    std::vector<Likest> order;
    order.reserve(of_looks.size());
    for (const auto& [look, likest] : of_looks) order.push_back(likest);
    const auto wanted = static_cast<std::ptrdiff_t>(std::min(at_most, order.size()));
    std::ranges::partial_sort(order, order.begin() + wanted, {}, [](const Likest& likest) {
        return std::pair(likest.unlikeness, likest.candidate->pair);
    });
    std::vector<LikePair> pairs;
    for (const Likest& likest : std::span(order).first(static_cast<std::size_t>(wanted))) {
        pairs.push_back({likest.candidate->pair, likest.unlikeness,
                         reasons_of(facts, hair, *likest.candidate)});
    }
    return pairs;
}

std::vector<double> order_by_least_unlikeness(const HairLook& hair,
                                              std::vector<LikeCandidate>& candidates) {
    std::vector<std::pair<double, std::size_t>> order;
    for (const LikeCandidate& candidate : candidates) {
        order.emplace_back(without_facts(hair, candidate), order.size());
    }
    std::ranges::sort(order);
    std::vector<double> least;
    std::vector<LikeCandidate> ordered;
    for (const auto& [unlikeness, place] : order) {
        least.push_back(unlikeness);
        ordered.push_back(std::move(candidates[place]));
    }
    candidates = std::move(ordered);
    return least;
}

}  // namespace quarterturn
