#pragma once

namespace quarterturn {

// Where a head with its hair stands in a photo, in shares of the width and height of the upright
// picture as its file shows it, mirrored or not.
struct HeadBox {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;

    bool operator==(const HeadBox&) const = default;
};

}  // namespace quarterturn
