#pragma once
// One of OpenCV's face cascades, in a part of its own: the library brings a whole machine of neural
// nets with it.

#include <memory>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

namespace quarterturn {

struct Detection {
    double step = 1.1;  // from one size to the next
    int neighbours = 4;
    int smallest = 0;  // pixels
};

class Cascade {
  public:
    virtual ~Cascade() = default;
    virtual std::vector<cv::Rect> detect(const cv::Mat& grey, const Detection& how) = 0;
};

// Nothing when the file cannot be read. Throws std::runtime_error when the part is missing.
std::unique_ptr<Cascade> load_cascade(const std::string& file);

}  // namespace quarterturn
