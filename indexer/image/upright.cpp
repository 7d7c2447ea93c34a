#include "indexer/image/upright.h"

namespace quarterturn {

cv::Mat upright(const cv::Mat& stored, int orientation) {
    cv::Mat turned;
    switch (orientation) {
        case 2:
            cv::flip(stored, turned, 1);
            return turned;
        case 3:
            cv::rotate(stored, turned, cv::ROTATE_180);
            return turned;
        case 4:
            cv::flip(stored, turned, 0);
            return turned;
        case 5:
            cv::transpose(stored, turned);
            return turned;
        case 6:
            cv::rotate(stored, turned, cv::ROTATE_90_CLOCKWISE);
            return turned;
        case 7:
            cv::transpose(stored, turned);
            cv::rotate(turned, turned, cv::ROTATE_180);
            return turned;
        case 8:
            cv::rotate(stored, turned, cv::ROTATE_90_COUNTERCLOCKWISE);
            return turned;
        default:
            return stored;
    }
}

}  // namespace quarterturn
