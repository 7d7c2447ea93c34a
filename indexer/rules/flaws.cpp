#include "indexer/rules/flaws.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr double least_focus = 2.1;
constexpr double least_motion_of_moved = 0.09;
constexpr double least_light = 0.25;
constexpr double most_clipped_highlights = 0.3;
constexpr int least_long_edge = 1000;

// A focus of 0 could not be told; that is no flaw.
bool is_soft(const Measures& measures) {
    return measures.focus > 0 && measures.focus < least_focus;
}

}  // namespace

std::vector<Flaw> judge_flaws(const Measures& measures, int width, int height) {
    std::vector<Flaw> flaws;
    if (is_soft(measures)) {
        const bool one_way = measures.motion >= least_motion_of_moved;
        flaws.push_back(one_way ? Flaw::moved : Flaw::out_of_focus);
    }
    if (measures.mean_light < least_light) flaws.push_back(Flaw::too_dark);
    if (measures.clipped_highlights > most_clipped_highlights) flaws.push_back(Flaw::blown_out);
    if (std::max(width, height) < least_long_edge) flaws.push_back(Flaw::too_small);
    return flaws;
}

}  // namespace quarterturn
