#pragma once

#include <opencv2/core.hpp>

namespace quarterturn {

// While one of these lives, OpenCV starts no threads of its own: there is a photo for each thread.
class OneThreadEach {
  public:
    OneThreadEach() : before_(cv::getNumThreads()) { cv::setNumThreads(1); }
    ~OneThreadEach() { cv::setNumThreads(before_); }
    OneThreadEach(const OneThreadEach&) = delete;
    OneThreadEach& operator=(const OneThreadEach&) = delete;

  private:
    int before_;
};

}  // namespace quarterturn
