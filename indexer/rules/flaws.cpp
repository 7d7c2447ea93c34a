#include "indexer/rules/flaws.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr double least_focus = 0.08;
constexpr double most_motion = 0.5;
constexpr double least_light = 0.16;
constexpr double most_clipped_highlights = 0.25;
constexpr int least_long_edge = 1000;

}  // namespace

std::vector<Flaw> judge_flaws(const Measures& measures, int width, int height) {
    std::vector<Flaw> flaws;
    const bool soft = measures.focus < least_focus;
    const bool one_way = measures.motion > most_motion;
    if (soft && !one_way) flaws.push_back(Flaw::out_of_focus);
    if (soft && one_way) flaws.push_back(Flaw::moved);
    if (measures.mean_light < least_light) flaws.push_back(Flaw::too_dark);
    if (measures.clipped_highlights > most_clipped_highlights) flaws.push_back(Flaw::blown_out);
    if (std::max(width, height) < least_long_edge) flaws.push_back(Flaw::too_small);
    return flaws;
}

}  // namespace quarterturn
