#include "indexer/sheet/crop.h"

#include <cmath>

namespace quarterturn {
namespace {

constexpr double cell_aspect = 0.8;

double head_in_cell(const HeadedPhoto& photo, double share) {
    return photo.head.height / part_around_head(photo, share, cell_aspect).height;
}

TEST(Crop, HeadsTakenFromNearAndFarStandEquallyLarge) {
    const std::vector<HeadedPhoto> photos{{{1500, 2000}, {0.3, 0.2, 0.35, 0.4}},
                                          {{3000, 4000}, {0.4, 0.3, 0.2, 0.22}},
                                          {{2000, 1500}, {0.35, 0.2, 0.24, 0.45}}};
    const double share = common_head_share(photos, cell_aspect);
    for (const HeadedPhoto& photo : photos) EXPECT_NEAR(head_in_cell(photo, share), share, 1e-9);
}

TEST(Crop, OnePhotoTakenTooCloseDoesNotMakeTheOthersCloseToo) {
    const std::vector<HeadedPhoto> photos{{{1500, 2000}, {0.3, 0.2, 0.35, 0.4}},
                                          {{1500, 2000}, {0.0, 0.0, 1.0, 1.0}}};
    EXPECT_LT(common_head_share(photos, cell_aspect), 0.9);
}

TEST(Crop, AHeadAtTheSideStaysWhole) {
    const HeadedPhoto photo{{1500, 2000}, {0.62, 0.05, 0.36, 0.4}};
    const Part part = part_around_head(photo, 0.56, cell_aspect);
    EXPECT_LE(part.x, photo.head.x);
    EXPECT_LE(part.y, photo.head.y);
    EXPECT_GE(part.x + part.width, photo.head.x + photo.head.width);
    EXPECT_GE(part.y + part.height, photo.head.y + photo.head.height);
}

// A low bun seen from behind: the outline may end above it, yet the bun belongs to the head.
TEST(Crop, BelowAFlatOutlineThereIsRoomForABunAndAboveItAir) {
    const HeadedPhoto photo{{1500, 2000}, {0.19, 0.14, 0.59, 0.45}};  // the bun reaches to 0.70
    const double aspect = 1.05;
    const Part part =
        part_around_head(photo, common_head_share(std::vector{photo}, aspect), aspect);
    EXPECT_GT(part.y + part.height, 0.70);
    EXPECT_LT(part.y, 0.14);
}

RC_GTEST_PROP(Crop, ThePartLiesInThePictureAndHasTheCellsProportions, ()) {
    const auto share_of = [](int from, int to) { return *rc::gen::inRange(from, to) / 100.0; };
    HeadedPhoto photo;
    photo.upright = {static_cast<double>(*rc::gen::inRange(50, 8000)),
                     static_cast<double>(*rc::gen::inRange(50, 8000))};
    photo.head.width = share_of(1, 101);
    photo.head.height = share_of(1, 101);
    photo.head.x = (1 - photo.head.width) * share_of(0, 101);
    photo.head.y = (1 - photo.head.height) * share_of(0, 101);
    const double aspect = share_of(50, 200);
    const Part part =
        part_around_head(photo, common_head_share(std::vector{photo}, aspect), aspect);
    RC_ASSERT(part.x >= 0 && part.y >= 0);
    RC_ASSERT(part.x + part.width <= 1 + 1e-9 && part.y + part.height <= 1 + 1e-9);
    const double proportions =
        part.width * photo.upright.width / (part.height * photo.upright.height);
    RC_ASSERT(std::abs(proportions - aspect) < 1e-6 * aspect);
}

RC_GTEST_PROP(Crop, AWholePictureIsNeverStretchedAndTouchesTheCell, ()) {
    const Size picture{static_cast<double>(*rc::gen::inRange(1, 9000)),
                       static_cast<double>(*rc::gen::inRange(1, 9000))};
    const Box cell{10, 20, static_cast<double>(*rc::gen::inRange(5, 200)),
                   static_cast<double>(*rc::gen::inRange(5, 200))};
    const Box box = whole_in_cell(picture, cell);
    RC_ASSERT(std::abs(box.width * picture.height - box.height * picture.width) <
              1e-6 * box.width * picture.height);
    RC_ASSERT(box.x >= cell.x - 1e-9 && box.y >= cell.y - 1e-9);
    RC_ASSERT(box.x + box.width <= cell.x + cell.width + 1e-9);
    RC_ASSERT(box.y + box.height <= cell.y + cell.height + 1e-9);
    RC_ASSERT(std::abs(box.width - cell.width) < 1e-9 || std::abs(box.height - cell.height) < 1e-9);
}

}  // namespace
}  // namespace quarterturn
