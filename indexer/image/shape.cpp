#include "indexer/image/shape.h"

#include <algorithm>
#include <cmath>

namespace quarterturn {
namespace {

int place_of_window(int length, int window, double wanted_middle) {
    const int start = static_cast<int>(std::lround(wanted_middle - window / 2.0));
    return std::clamp(start, 0, length - window);
}

}  // namespace

cv::Rect window_of_shape(cv::Size picture, double width_over_height,
                         const std::optional<cv::Rect>& head) {
    cv::Size window = picture;
    if (picture.width > picture.height * width_over_height) {
        window.width = std::max(1, static_cast<int>(picture.height * width_over_height));
    } else {
        window.height = std::max(1, static_cast<int>(picture.width / width_over_height));
    }
    const cv::Rect around = head.value_or(cv::Rect({}, picture));
    return {{place_of_window(picture.width, window.width, around.x + around.width / 2.0),
             place_of_window(picture.height, window.height, around.y + around.height / 2.0)},
            window};
}

}  // namespace quarterturn
