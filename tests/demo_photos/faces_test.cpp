// Viola-Jones cascades, as Debian's opencv-data ships them, find the training head's face where a
// face is to be seen: tags are checked against faces elsewhere in the program.

#include <gtest/gtest.h>

#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <opencv2/objdetect.hpp>

#include "tests/demo_photos/truth_table.h"

namespace quarterturn::demo {
namespace {

const std::string cascades = "/usr/share/opencv4/haarcascades/";

cv::Mat small_grey(const std::filesystem::path& file) {
    cv::Mat grey = cv::imread(file.string(), cv::IMREAD_GRAYSCALE);
    if (grey.empty()) return grey;
    cv::resize(grey, grey, {}, 640.0 / grey.rows, 640.0 / grey.rows, cv::INTER_AREA);
    return grey;
}

bool found(cv::CascadeClassifier& cascade, const cv::Mat& grey) {
    std::vector<cv::Rect> faces;
    cascade.detectMultiScale(grey, faces, 1.1, 4, 0, {110, 110});
    return !faces.empty();
}

TEST(Faces, AreFoundInFrontPhotosAndNotBehind) {
    cv::CascadeClassifier frontal(cascades + "haarcascade_frontalface_default.xml");
    ASSERT_FALSE(frontal.empty()) << "Install opencv-data.";
    for (const TruthRow& row : read_truth()) {
        const bool front = row.at("angle") == "front";
        if ((!front && row.at("angle") != "back") || row.at("flaw") != "none") continue;
        const cv::Mat grey = small_grey(demo_folder() / "photos" / row.at("file"));
        if (grey.empty()) continue;  // HEIC, which imread does not open
        EXPECT_EQ(found(frontal, grey), front) << row.at("file");
    }
}

}  // namespace
}  // namespace quarterturn::demo
