#include "indexer/sheet/plan_grid.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "tests/indexer/sheet/page_boxes.h"

namespace quarterturn {
namespace {

constexpr Box paper_area{10, 60, 190, 210};
constexpr double grid_gutter = 4;
constexpr double below_photo = 6;

std::vector<Angle> some_angles() {
    std::vector<Angle> angles(quarter_angles.begin(), quarter_angles.end());
    for (const Angle angle : further_angles) {
        if (*rc::gen::arbitrary<bool>()) angles.push_back(angle);
    }
    return angles;
}

double middle_x(const Box& box) {
    return box.x + box.width / 2;
}

double middle_y(const Box& box) {
    return box.y + box.height / 2;
}

// Where the camera stood, as seen from above with the front at the top: the plan as words.md tells
// it, in steps of one to the right and down.
std::pair<int, int> where(Angle angle) {
    switch (angle) {
        case Angle::front:
            return {0, -1};
        case Angle::back:
            return {0, 1};
        case Angle::left:
            return {-1, 0};
        case Angle::right:
            return {1, 0};
        case Angle::left_three_quarter:
            return {-1, -1};
        case Angle::right_three_quarter:
            return {1, -1};
        case Angle::crown:
            return {0, 0};
        case Angle::detail:
            return {-1, 1};
    }
    return {};
}

int sign(double difference) {
    return difference < -near_zero ? -1 : difference > near_zero ? 1 : 0;
}

RC_GTEST_PROP(PlanGrid, LiesAsTheHeadPlanDoesAndNothingOverlaps, ()) {
    const std::vector<Angle> angles = some_angles();
    const PlanGrid grid = plan_grid(angles, paper_area, grid_gutter, below_photo);
    RC_ASSERT(grid.photos.size() == angles.size());
    std::vector<Box> all = grid.photos;
    for (Box& box : all) box.height += below_photo;
    all.insert(all.end(), grid.free.begin(), grid.free.end());
    for (std::size_t i = 0; i < all.size(); ++i) {
        RC_ASSERT(all[i].width > 0 && all[i].height > 0);
        RC_ASSERT(all[i].x >= paper_area.x - near_zero);
        RC_ASSERT(all[i].y >= paper_area.y - near_zero);
        RC_ASSERT(all[i].x + all[i].width <= paper_area.x + paper_area.width + near_zero);
        RC_ASSERT(all[i].y + all[i].height <= paper_area.y + paper_area.height + near_zero);
        for (std::size_t k = 0; k < i; ++k) RC_ASSERT(!overlap(all[i], all[k]));
    }
    for (std::size_t i = 0; i < angles.size(); ++i) {
        for (std::size_t k = 0; k < angles.size(); ++k) {
            const Box& one = grid.photos[i];
            const Box& other = grid.photos[k];
            RC_ASSERT(sign(middle_x(one) - middle_x(other)) ==
                      sign(where(angles[i]).first - where(angles[k]).first));
            RC_ASSERT(sign(middle_y(one) - middle_y(other)) ==
                      sign(where(angles[i]).second - where(angles[k]).second));
            RC_ASSERT(one.width == other.width && one.height == other.height);
        }
    }
}

}  // namespace
}  // namespace quarterturn
