#include "indexer/rules/head_points.h"

#include <algorithm>
#include <cmath>

namespace quarterturn {

std::optional<std::string> reason_against(const HeadPoints& points, std::optional<Angle> angle) {
    if (points.top == points.bottom) {
        return "The top of the hair and the chin or nape cannot be in one place.";
    }
    if (angle != Angle::crown && points.top.y >= points.bottom.y) {
        return "The top of the hair would lie no higher than the chin or nape: the two points are "
               "the wrong way round.";
    }
    if (std::hypot(points.top.x - points.bottom.x, points.top.y - points.bottom.y) < least_head) {
        return "The top of the hair and the chin or nape lie nearly in one place: a head is at "
               "least a few % of the picture's height.";
    }
    return std::nullopt;
}

std::optional<std::string> reason_against_sizes(double first_head, double second_head) {
    const auto [least, most] = std::minmax(first_head, second_head);
    if (least > 0 && most <= most_between_heads * least) return std::nullopt;
    return "The head is set far larger in one photo than in the other, which no two photos of one "
           "angle show: set its two points anew in both.";
}

}  // namespace quarterturn
