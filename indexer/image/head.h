#pragma once
// Finding the head and the way the face looks.

#include <memory>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

// Counts up when heads are looked for in another way.
inline constexpr int head_search_version = 1;

// Viola and Jones (2001), as OpenCV's cascades. Holds the cascades; one for each thread.
class HeadFinder {
  public:
    // Throws std::runtime_error naming the missing cascade file (package opencv-data).
    HeadFinder();
    ~HeadFinder();
    HeadFinder(HeadFinder&&) noexcept;
    HeadFinder& operator=(HeadFinder&&) noexcept;

    HeadSigns signs(const cv::Mat& bgr);

    // Squares on the faces that show, straight ones first, then those in profile; in pixels of
    // `bgr`. A cascade also sees faces in hair.
    std::vector<cv::Rect> faces(const cv::Mat& bgr);

    // Squares around all that may be a face, straight or in profile, also small ones and those
    // inclined by up to 30 degrees: for telling whether a picture shows none. Sees more faces in
    // hair than faces() does, and misses some still: tests/accuracy/hair_only_test.cpp measures
    // it.
    std::vector<cv::Rect> perhaps_faces(const cv::Mat& bgr);

    // The head with its hair, in pixels of `bgr`: from the face or profile where one shows, else by
    // separating head and hair from the background. Nothing when neither is sure.
    std::optional<cv::Rect> head(const cv::Mat& bgr);

  private:
    struct Cascades;
    std::unique_ptr<Cascades> cascades_;
};

}  // namespace quarterturn
