#pragma once
// The pixels of one photo as it stands in its box: right way round, the part that is shown, no
// larger than the box is drawn.

#include <opencv2/core.hpp>
#include <string>

#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct BoxPicture {
    // CV_8UC3, of the box's proportions; empty when there is a problem. Once it is on paper,
    // CV_8UC4: Qt lays those down without converting them. Not to be written to.
    cv::Mat bgr;
    std::string problem;  // why there is no picture, without the file's name
};

cv::Size pixels_of(const Box& box, double dpi);

cv::Mat on_paper(const cv::Mat& bgr);

// `pixels` is the box in pixels. The picture may be smaller when the photo has no more to give.
BoxPicture picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder, FileSystem& disk);

// For `item.ahead`: the picture on paper, from its small file alone. Empty where that has too few
// pixels, or cannot be opened.
cv::Mat small_picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder,
                          FileSystem& disk);

}  // namespace quarterturn
