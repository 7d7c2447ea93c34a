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
    std::optional<PhotoId> first{};
    std::optional<PhotoId> second{};
    bool pinned = false;
    bool refused = false;
    bool first_gone = false;  // the photo she chose was removed from the library since
    bool second_gone = false;

    bool operator==(const PairChoice&) const = default;
};

// What has become of the photo she chose for one side since she chose it.
enum class SideNote {
    none,
    tagged_otherwise,  // pinned: it stays, though its tags now say something else
    not_usable,        // it stays, though it has a flaw that she has not accepted
    set_aside,         // its tags now say something else: the best one stands instead
    removed            // from the library: the best one stands instead
};
inline constexpr std::array all_side_notes{SideNote::none, SideNote::tagged_otherwise,
                                           SideNote::not_usable, SideNote::set_aside,
                                           SideNote::removed};
std::string_view word(SideNote note);
std::optional<SideNote> parse_side_note(std::string_view text);

// As it was made from the photos and her choice.
struct MadePair {
    PairPlace place;
    PhotoId first;   // before, or the earlier sitting
    PhotoId second;  // after, or the later one
    SideNote first_note = SideNote::none;
    SideNote second_note = SideNote::none;
    std::optional<Date> worn_on;  // the wedding, else the day of the second photo's sitting

    bool operator==(const MadePair&) const = default;
};

struct Pair {
    PairId id;
    MadePair made;
    PairChoice choice;

    bool operator==(const Pair&) const = default;
};

// What lays the second photo upon the first, as it was found; see image/similarity.h. In heights of
// the pictures, upright and the right way round.
struct PairAlignment {
    double along = 1;
    double across = 0;
    double x = 0;
    double y = 0;
    bool sure = false;

    bool operator==(const PairAlignment&) const = default;
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
