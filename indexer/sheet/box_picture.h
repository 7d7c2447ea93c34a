#pragma once
// The pixels of one photo as it stands in its box: right way round, the part that is shown, no
// larger than the box is drawn.

#include <opencv2/core.hpp>
#include <string>

#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct BoxPicture {
    cv::Mat bgr;          // CV_8UC3, of the box's proportions; empty when there is a problem
    std::string problem;  // why there is no picture, without the file's name
};

// `pixels` is the box in pixels. The picture may be smaller when the photo has no more to give.
BoxPicture picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder, FileSystem& disk);

}  // namespace quarterturn
