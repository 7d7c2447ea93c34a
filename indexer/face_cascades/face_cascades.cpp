#include <opencv2/objdetect.hpp>

#include "indexer/image/cascade.h"

namespace quarterturn {
namespace {

class OpenCvCascade final : public Cascade {
  public:
    bool load(const char* file) { return cascade_.load(file); }

    std::vector<cv::Rect> detect(const cv::Mat& grey, const Detection& how) override {
        std::vector<cv::Rect> found;
        cascade_.detectMultiScale(grey, found, how.step, how.neighbours, 0,
                                  {how.smallest, how.smallest});
        return found;
    }

  private:
    cv::CascadeClassifier cascade_;
};

}  // namespace
}  // namespace quarterturn

extern "C" quarterturn::Cascade* quarterturn_load_cascade(const char* file) {
    auto cascade = std::make_unique<quarterturn::OpenCvCascade>();
    return cascade->load(file) ? cascade.release() : nullptr;
}
