// How sure it is that a crop leaves the face out: on a portrait in the public domain (the astronaut
// of scikit-image, NASA; the environment variable PORTRAIT names the file), turned, scaled, lit and
// cropped in 560 ways. Prints what was measured. Each way takes a second or two, so that every 27th
// is tried unless PORTRAIT_EVERY says otherwise; DEVELOPERS.md has the figures of all of them.

#include "indexer/image/hair_only.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "indexer/image/head.h"

namespace quarterturn {
namespace {

// Of the portrait of 512 by 512 pixels: brows to chin, seen by eye.
const cv::Rect2f portrait_face(178, 72, 94, 108);

struct Shown {
    cv::Mat picture;
    cv::Rect2f face;  // around its four corners
};

cv::Mat lit(const cv::Mat& bgr, int way) {
    cv::Mat result;
    switch (way) {
        case 1:
            bgr.convertTo(result, -1, 0.45, 0);  // dim
            return result;
        case 2:
            bgr.convertTo(result, -1, 1.5, 30);  // glaring
            return result;
        case 3: {  // from one side
            cv::Mat shade(bgr.size(), CV_32FC3);
            for (int x = 0; x < bgr.cols; ++x) {
                shade.col(x).setTo(cv::Scalar::all(0.35 + 0.9 * x / bgr.cols));
            }
            bgr.convertTo(result, CV_32FC3);
            cv::multiply(result, shade, result);
            result.convertTo(result, CV_8UC3);
            return result;
        }
        default:
            return bgr.clone();
    }
}

Shown shown(const cv::Mat& portrait, double degrees, double larger, int light,
            const cv::Rect& crop) {
    const cv::Mat turn = cv::getRotationMatrix2D({225, 150}, degrees, larger);
    cv::Mat turned;
    cv::warpAffine(lit(portrait, light), turned, turn, portrait.size(), cv::INTER_LINEAR,
                   cv::BORDER_REPLICATE);
    const cv::Rect2f& face = portrait_face;
    std::vector<cv::Point2f> corners{
        face.tl(), {face.x + face.width, face.y}, face.br(), {face.x, face.y + face.height}};
    cv::transform(corners, corners, turn);
    for (cv::Point2f& corner : corners) corner -= cv::Point2f(crop.tl());
    return {turned(crop).clone(), cv::boundingRect(corners)};
}

int every_how_many() {
    const char* said = std::getenv("PORTRAIT_EVERY");
    return said == nullptr ? 27 : std::max(1, std::atoi(said));
}

std::vector<Shown> all_shown(const cv::Mat& portrait) {
    std::vector<Shown> all;
    int way = 0;
    for (const double degrees : {-30., -20., -10., 0., 10., 20., 30.}) {
        for (const double larger : {0.6, 0.8, 1.0, 1.3, 1.6}) {
            for (int light = 0; light < 4; ++light) {
                for (const cv::Rect& crop : {cv::Rect(0, 0, 512, 512), cv::Rect(60, 0, 400, 400),
                                             cv::Rect(0, 0, 400, 512), cv::Rect(90, 0, 300, 480)}) {
                    if (way++ % every_how_many() != 0) continue;
                    all.push_back(shown(portrait, degrees, larger, light, crop));
                }
            }
        }
    }
    return all;
}

TEST(HairOnly, LeavesThePortraitsFaceOut) {
    const char* file = std::getenv("PORTRAIT");
    if (file == nullptr) GTEST_SKIP() << "PORTRAIT names no portrait";
    const cv::Mat portrait = cv::imread(file);
    ASSERT_EQ(portrait.size(), cv::Size(512, 512));
    HeadFinder finder;
    int tried = 0, found = 0, proposed = 0, left = 0, missed = 0, half_kept = 0, half_found = 0;
    for (const Shown& each : all_shown(portrait)) {
        ++tried;
        const auto perhaps = finder.perhaps_faces(each.picture);
        found += perhaps.empty() ? 0 : 1;
        // A crop through the middle of the face, as a wrong one would be.
        const int middle = cvRound(each.face.y + each.face.height / 2);
        if (middle > 40 && middle < each.picture.rows - 40) {
            ++half_kept;
            HairOnly half;
            half.way = HairOnlyWay::crop;
            half.height = 1.0 * middle / each.picture.rows;
            half_found += shows_perhaps_face(half, each.picture.size(), perhaps) ||
                                  !finder.perhaps_faces(each.picture.rowRange(0, middle)).empty()
                              ? 1
                              : 0;
        }
        const HeadInPicture head{each.picture.size(), finder.faces(each.picture),
                                 finder.head(each.picture), Angle::front};
        for (const HairOnly& how : ways_without_face(head)) {
            if (shows_perhaps_face(how, each.picture.size(), perhaps)) continue;
            const cv::Mat picture = without_face(each.picture, how);
            if (!finder.perhaps_faces(picture).empty()) continue;  // refused
            ++proposed;
            if (how.way == HairOnlyWay::cover) break;
            const cv::Rect2f kept(static_cast<float>(how.x * each.picture.cols),
                                  static_cast<float>(how.y * each.picture.rows),
                                  static_cast<float>(how.width * each.picture.cols),
                                  static_cast<float>(how.height * each.picture.rows));
            const double share = (kept & each.face).area() / each.face.area();
            left += share > 0.25 ? 1 : 0;
            missed += share > 0.5 ? 1 : 0;
            break;
        }
    }
    std::cout << "Portrait shown in " << tried << " ways: a face was found in " << found
              << "; a picture without it was proposed for " << proposed << ", of which " << left
              << " keep more than a quarter of the face and " << missed << " more than half. Of "
              << half_kept << " crops through the middle of the face " << half_found
              << " were caught.\n";
    EXPECT_GE(tried, 560 / every_how_many());
    EXPECT_GE(found, tried * 95 / 100);
    EXPECT_LE(left, proposed * 2 / 100);
}

}  // namespace
}  // namespace quarterturn
