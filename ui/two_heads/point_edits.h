#pragma once
// Where the heads stand, as she shows it: an action that can be undone.

#include <vector>

#include "ui/shell/edits.h"

namespace quarterturn {

struct PointsOfPhoto {
    PhotoId photo;
    std::optional<HeadPoints> points;  // nothing: found by the program again
};

Edit change_points(const std::vector<PointsOfPhoto>& changes);

}  // namespace quarterturn
