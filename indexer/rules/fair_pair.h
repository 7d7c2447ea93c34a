#pragma once
// Whether two photos of a pair may be compared fairly, in words with the figures. Published rules
// of advertising ask that before and after do not mislead; which ones hold is for local law.

#include <optional>
#include <string>
#include <vector>

namespace quarterturn {

// What was measured between the first photo and the second; nothing where it cannot be told.
struct PairFigures {
    struct Light {
        double exposure_ev = 0;         // the second over the first
        double white_balance_de00 = 0;  // of the backgrounds
        bool at_least = false;          // the true differences may be larger

        bool operator==(const Light&) const = default;
    };
    std::optional<Light> light;
    std::optional<double> size;          // the second head over the first
    std::optional<double> turn_degrees;  // how far the camera was rolled between them, clockwise

    bool operator==(const PairFigures&) const = default;
};

// A third of a step is the least that cameras let one set (common practice). Demo photos of one
// sitting differ by 0.03 EV and 0.8 ΔE00 at most, those of two rooms by 3.5 ΔE00 at least; 2 is
// chosen between. Demo pairs of one angle differ in size by 1.3 at most; at 1.5 a head that was
// taken from nearer looks narrower beside the other (chosen). From 5° on a head looks tilted beside
// one that is upright (chosen).
inline constexpr double fair_exposure_ev = 0.33;
inline constexpr double fair_white_balance_de00 = 2;
inline constexpr double fair_size = 1.5;  // one way or the other
inline constexpr double fair_turn_degrees = 5;

struct Fairness {
    std::vector<std::string> unfair;   // what differs too much, each a sentence with its figure
    std::vector<std::string> figures;  // all that was measured, and what cannot be told
};

Fairness judge_fairness(const PairFigures& figures);

// What differs too much, where there is little room: "1.2 EV darker, other light, tilted by 7°".
// Empty when nothing does.
std::string unfair_in_short(const PairFigures& figures);

// The same for those who look at the pair: "Not taken alike: light, distance." Empty when nothing
// differs too much.
std::string not_taken_alike(const PairFigures& figures);

inline constexpr const char* unfair_caution =
    "That is too much for a fair comparison. Published advertising rules ask that before and after "
    "do not mislead; which rules hold is for the law where you work.";

}  // namespace quarterturn
