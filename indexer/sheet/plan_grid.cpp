#include "indexer/sheet/plan_grid.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr double highest_of_width = 1.4;  // a head with its shoulders

struct GridPlace {
    int column = 0;
    int row = 0;

    bool operator==(const GridPlace&) const = default;
};

GridPlace place_of(Angle angle) {
    switch (angle) {
        case Angle::front:
            return {1, 0};
        case Angle::left:
            return {0, 1};
        case Angle::right:
            return {2, 1};
        case Angle::back:
            return {1, 2};
        case Angle::crown:
            return {1, 1};
        case Angle::left_three_quarter:
            return {0, 0};
        case Angle::right_three_quarter:
            return {2, 0};
        case Angle::detail:
            return {0, 2};
    }
    return {};
}

bool quarters_alone(std::span<const Angle> angles) {
    return std::ranges::all_of(angles, [](Angle angle) {
        return std::ranges::find(quarter_angles, angle) != quarter_angles.end();
    });
}

}  // namespace

PlanGrid plan_grid(std::span<const Angle> angles, const Box& area, double gutter, double caption) {
    const int rows = quarters_alone(angles) ? 2 : 3;
    const double width = (area.width - 2 * gutter) / 3;
    const double row = area.height / rows;
    const double height = std::min(row - caption - gutter, width * highest_of_width);
    const auto at = [&](GridPlace place) {
        const double top = rows == 3 ? place.row * row : place.row * row / 2;
        return Box{area.x + place.column * (width + gutter), area.y + top, width, height};
    };
    PlanGrid grid;
    std::vector<GridPlace> taken;
    for (const Angle angle : angles) {
        taken.push_back(place_of(angle));
        grid.photos.push_back(at(taken.back()));
    }
    const auto add_free = [&](GridPlace place) {
        if (std::ranges::find(taken, place) == taken.end()) grid.free.push_back(at(place));
    };
    if (rows == 3) add_free({1, 1});
    for (const int line : {0, 2}) {
        for (const int column : {0, 2}) add_free({column, line});
    }
    if (rows == 2) {  // above and below left and right
        for (Box& box : grid.free) {
            const bool lower = box.y > area.y;
            box.y = area.y + (lower ? row / 2 + height + caption + gutter : 0);
            box.height = lower ? area.y + area.height - box.y : row / 2 - gutter;
        }
    }
    return grid;
}

}  // namespace quarterturn
