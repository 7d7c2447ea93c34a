#include "ui/painter/picture.h"

namespace quarterturn {

QImage as_image(const cv::Mat& bgr) {
    return {bgr.data, bgr.cols, bgr.rows, static_cast<qsizetype>(bgr.step), QImage::Format_BGR888};
}

}  // namespace quarterturn
