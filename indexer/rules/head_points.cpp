#include "indexer/rules/head_points.h"

namespace quarterturn {

std::optional<std::string> reason_against(const HeadPoints& points, std::optional<Angle> angle) {
    if (points.top == points.bottom) {
        return "The top of the hair and the chin or nape cannot be in one place.";
    }
    if (angle != Angle::crown && points.top.y >= points.bottom.y) {
        return "The top of the hair would lie no higher than the chin or nape: the two points are "
               "the wrong way round.";
    }
    return std::nullopt;
}

}  // namespace quarterturn
