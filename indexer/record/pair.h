#pragma once
// Two photos of one look from one angle that belong beside each other.

#include <array>
#include <compare>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/look_facts.h"
#include "indexer/record/time.h"
#include "indexer/record/words.h"

namespace quarterturn {

using PairId = Id<struct PairRow>;

enum class PairKind { before_and_after, trial_and_day, trial_and_trial };
inline constexpr std::array all_pair_kinds{PairKind::before_and_after, PairKind::trial_and_day,
                                           PairKind::trial_and_trial};
std::string_view word(PairKind kind);  // "trial and wedding day"
std::optional<PairKind> parse_pair_kind(std::string_view text);

// There is one pair for each of these at most.
struct PairPlace {
    LookId look;
    PairKind kind = PairKind::before_and_after;
    int number = 1;  // of trials: 1 is the first with the second, 2 the second with the third
    Angle angle = Angle::front;

    auto operator<=>(const PairPlace&) const = default;
};

// What she said of a pair. A photo that she chose stands while its tags allow it; in a pinned pair
// both stand whatever becomes of their tags.
struct PairChoice {
    std::optional<PhotoId> first;
    std::optional<PhotoId> second;
    bool pinned = false;
    bool refused = false;

    bool operator==(const PairChoice&) const = default;
};

// As it was made from the photos and her choice.
struct MadePair {
    PairPlace place;
    PhotoId first;              // before, or the earlier sitting
    PhotoId second;             // after, or the later one
    bool first_strays = false;  // pinned, though its tags now say something else
    bool second_strays = false;
    std::optional<Date> worn_on;  // the wedding, else the day of the second photo's sitting

    bool operator==(const MadePair&) const = default;
};

struct Pair {
    PairId id;
    MadePair made;
    PairChoice choice;

    bool operator==(const Pair&) const = default;
};

using FactValues = std::map<Fact, std::vector<std::string>>;

// Every fact that is named must have one of its values, and every word must be found.
struct PairFilter {
    FactValues values{};
    std::string words{};   // as in PhotoSearch, for either photo
    bool refused = false;  // those that she refused, and only those

    bool operator==(const PairFilter&) const = default;
};

struct KeptPairFilter {
    std::string name;
    PairFilter filter;

    bool operator==(const KeptPairFilter&) const = default;
};

}  // namespace quarterturn
