#include "indexer/image/shoulder_line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/imgproc.hpp>

namespace quarterturn {
namespace {

const cv::Size size_of_picture(192, 256);

// Someone from behind before a wall: her head, and clothes that fall off to both sides from the
// neck.
struct Figure {
    double slope = 0.4;  // pixels down for one outwards
    int neck = 170;      // the row where the clothes begin
    cv::Scalar wall{200, 205, 210};
    cv::Scalar clothes{150, 150, 160};

    double shoulder_at(double column) const {
        return neck + slope * std::max(0.0, std::abs(column - 96) - 20);
    }

    cv::Mat head() const {
        cv::Mat head = cv::Mat::zeros(size_of_picture, CV_8UC1);
        cv::ellipse(head, {96, 100}, {45, 60}, 0, 0, 360, 255, cv::FILLED);
        head(cv::Rect(76, 140, 40, neck + 12 - 140)).setTo(255);
        return head;
    }

    cv::Mat picture() const {
        cv::Mat bgr(size_of_picture, CV_8UC3, wall);
        for (int x = 0; x < bgr.cols; ++x) {
            const int row = cvRound(shoulder_at(x + 0.5));
            if (row < bgr.rows) bgr(cv::Rect(x, row, 1, bgr.rows - row)).setTo(clothes);
        }
        cv::GaussianBlur(bgr, bgr, {}, 0.8);
        bgr.setTo(cv::Scalar(40, 50, 60), head());
        return bgr;
    }
};

void expect_on_shoulder(const Figure& figure, const cv::Mat& bgr) {
    for (const auto side : {PictureSide::left, PictureSide::right}) {
        const auto line = shoulder_line(slopes_of(bgr), figure.head(), side);
        ASSERT_GE(line.size(), 30U);
        for (const cv::Point2d& point : line) {
            EXPECT_NEAR(point.y, figure.shoulder_at(point.x), 4) << point.x;
            EXPECT_EQ(point.x < 96, side == PictureSide::left);
        }
        EXPECT_LT(std::abs(line.back().x - 96), std::abs(line.front().x - 96));
    }
}

TEST(ShoulderLine, RunsAlongTheClothesWhateverTheirSlopeAndColour) {
    for (const double slope : {0.3, 0.5, 0.8}) {
        for (const double clothes : {30.0, 120.0, 180.0, 245.0}) {
            Figure figure;
            figure.slope = slope;
            figure.clothes = cv::Scalar::all(clothes);
            SCOPED_TRACE(testing::Message() << "slope " << slope << ", clothes " << clothes);
            expect_on_shoulder(figure, figure.picture());
        }
    }
}

TEST(ShoulderLine, PassesOverSeamsFoldsAndTheTable) {
    const Figure figure;
    cv::Mat bgr = figure.picture();
    bgr.rowRange(244, 256).setTo(cv::Scalar(60, 90, 120));
    for (const int outwards : {-1, 1}) {
        cv::line(bgr, {96 + outwards * 40, 200}, {96 + outwards * 95, 225}, {110, 110, 120}, 2);
    }
    expect_on_shoulder(figure, bgr);
}

TEST(ShoulderLine, PassesOverAShelfBesideTheHead) {
    const Figure figure;
    cv::Mat bgr = figure.picture();
    cv::Mat shelf = bgr.rowRange(118, 124);
    shelf.setTo(cv::Scalar(150, 165, 175), figure.head().rowRange(118, 124) == 0);
    expect_on_shoulder(figure, bgr);
}

}  // namespace
}  // namespace quarterturn
