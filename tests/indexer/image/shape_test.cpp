#include "indexer/image/shape.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace quarterturn {
namespace {

TEST(WindowOfShape, StandsAroundTheHeadAsFarAsThePictureReaches) {
    EXPECT_EQ(window_of_shape({400, 200}, 1, {}), cv::Rect(100, 0, 200, 200));
    EXPECT_EQ(window_of_shape({400, 200}, 1, cv::Rect(300, 20, 60, 80)),
              cv::Rect(200, 0, 200, 200));
    EXPECT_EQ(window_of_shape({200, 400}, 1, cv::Rect(20, 40, 60, 80)), cv::Rect(0, 0, 200, 200));
    EXPECT_EQ(window_of_shape({200, 400}, 1, cv::Rect(20, 160, 60, 80)),
              cv::Rect(0, 100, 200, 200));
}

RC_GTEST_PROP(WindowOfShapeProperty, LiesInsideAndIsAsLargeAsItCanBe, ()) {
    const cv::Size picture(*rc::gen::inRange(1, 5000), *rc::gen::inRange(1, 5000));
    const double aspect = *rc::gen::element(1.0, 0.8, 9.0 / 16);
    const cv::Rect head(*rc::gen::inRange(-50, 5000), *rc::gen::inRange(-50, 5000),
                        *rc::gen::inRange(1, 900), *rc::gen::inRange(1, 900));
    const cv::Rect window = window_of_shape(picture, aspect, head);
    RC_ASSERT((window & cv::Rect({}, picture)) == window);
    RC_ASSERT(window.width == picture.width || window.height == picture.height);
    RC_ASSERT(std::abs(window.width - window.height * aspect) <= 1);
}

}  // namespace
}  // namespace quarterturn
