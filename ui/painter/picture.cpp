#include "ui/painter/picture.h"

namespace quarterturn {

QImage as_image(const cv::Mat& bgr) {
    const auto format = bgr.channels() == 4 ? QImage::Format_RGB32 : QImage::Format_BGR888;
    return {bgr.data, bgr.cols, bgr.rows, static_cast<qsizetype>(bgr.step), format};
}

}  // namespace quarterturn
