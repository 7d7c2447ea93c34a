#include "indexer/image/face_skin.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>
#include <optional>

#include "indexer/image/head_matching.h"
#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr int skin_edge = 160;  // pixels: enough for the outline of a face, and quick

cv::Mat round_brush(int size) {
    return cv::getStructuringElement(cv::MORPH_ELLIPSE, {size, size});
}

cv::Rect scaled(const cv::Rect& area, double scale) {
    return {cvRound(area.x * scale), cvRound(area.y * scale), cvRound(area.width * scale),
            cvRound(area.height * scale)};
}

// The largest face whose middle lies on the head; a cascade also sees faces in hair and on necks.
std::optional<cv::Rect> face_on_head(HeadFinder& finder, const cv::Mat& bgr, double scale) {
    const auto head = find_silhouette(bgr);
    std::optional<cv::Rect> best;
    for (const cv::Rect& face : finder.faces(bgr)) {
        const cv::Point middle = (face.tl() + face.br()) / 2;
        if (head && !head->contains(middle)) continue;
        if (!best || face.area() > best->area()) best = face;
    }
    if (best) best = scaled(*best, scale);
    return best;
}

// The middle of the face, where there is nothing but skin.
cv::Mat surely_skin(const cv::Rect& face, const cv::Mat& shape) {
    cv::Mat middle = cv::Mat::zeros(shape.size(), CV_8UC1);
    cv::ellipse(middle, (face.tl() + face.br()) / 2,
                {std::max(1, cvRound(0.22 * face.width)), std::max(1, cvRound(0.25 * face.height))},
                0, 0, 360, 255, cv::FILLED);
    cv::Mat inner;
    cv::erode(shape, inner, round_brush(3));
    return middle & inner;
}

// Just inside of the outline, from the top half way down to the face, there is hair.
cv::Mat surely_no_skin(const cv::Rect& face, const cv::Mat& shape) {
    const int rim = std::max(3, cvRound(0.12 * face.width));
    cv::Mat deep;
    cv::erode(shape, deep, round_brush(2 * rim + 1));
    cv::Mat hair = shape & ~deep;
    const int top = cv::boundingRect(shape).y;
    const int brow = face.y + face.height / 10;
    const int end = std::clamp(top + std::max(2, (brow - top) / 2), 0, hair.rows);
    hair.rowRange(end, hair.rows).setTo(0);
    return hair | (shape == 0);
}

cv::Mat told_apart(const cv::Mat& small, const cv::Mat& shape, const cv::Rect& face,
                   const cv::Mat& seed) {
    cv::Mat labels(small.size(), CV_8UC1, cv::Scalar(cv::GC_PR_BGD));
    labels(face & cv::Rect({0, 0}, small.size())).setTo(cv::GC_PR_FGD);
    labels.setTo(cv::GC_BGD, surely_no_skin(face, shape));
    labels.setTo(cv::GC_FGD, seed);
    constexpr int rounds = 4;
    cv::Mat background, foreground;
    cv::setRNGSeed(1);  // the same photo gets the same answer
    cv::grabCut(small, labels, {}, background, foreground, rounds, cv::GC_INIT_WITH_MASK);
    cv::Mat skin = (labels == cv::GC_FGD) | (labels == cv::GC_PR_FGD);
    cv::morphologyEx(skin, skin, cv::MORPH_OPEN, round_brush(3));
    return skin;
}

// What hangs together with most of the seed, with eyes and brows.
cv::Mat one_face(const cv::Mat& skin, const cv::Mat& seed) {
    cv::Mat labels;
    const int count = cv::connectedComponents(skin, labels);
    int most = 0, best = 0;
    for (int label = 1; label < count; ++label) {
        const int shared = cv::countNonZero((labels == label) & seed);
        if (shared > most) {
            most = shared;
            best = label;
        }
    }
    if (most == 0) return {};
    cv::Mat face = labels == best;
    cv::morphologyEx(face, face, cv::MORPH_CLOSE, round_brush(9));
    return face;
}

}  // namespace

cv::Mat face_skin(HeadFinder& finder, const cv::Mat& bgr) {
    if (std::min(bgr.cols, bgr.rows) < skin_edge / 2) return {};
    const cv::Mat small = with_long_edge(bgr, skin_edge);
    const auto face = face_on_head(finder, bgr, static_cast<double>(small.rows) / bgr.rows);
    if (!face) return {};
    const cv::Mat shape = shape_before_background(small, skin_edge);
    const cv::Mat seed = surely_skin(*face, shape);
    if (cv::countNonZero(seed) == 0 || cv::countNonZero(shape == 0) == 0) return {};
    const cv::Mat skin = one_face(told_apart(small, shape, *face, seed), seed);
    if (skin.empty()) return {};
    cv::Mat with_edge, others;
    cv::dilate(skin, with_edge, round_brush(7));
    cv::dilate(shape & ~skin, others, round_brush(5));
    const cv::Mat bare = with_edge & ~others;
    constexpr double least = 0.01;  // of the picture
    if (cv::countNonZero(bare) < least * static_cast<double>(bare.total())) return {};
    return bare;
}

}  // namespace quarterturn
