#pragma once
// One photo is worked on by one thread, and there are as many threads as the machine runs at once.

#include <algorithm>
#include <opencv2/core.hpp>
#include <thread>

namespace quarterturn {

inline unsigned worker_count() {
    return std::max(1U, std::thread::hardware_concurrency());
}

// While one of these lives, OpenCV starts no threads of its own.
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
