// bench_photos FOLDER COUNT: writes JPEGs of 12 megapixels (4000 × 3000) and 3 to 5 MB each, with
// strands and grain as in photos of hair, the same bytes in every run.

#include <filesystem>
#include <iostream>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <string>

namespace {

constexpr int strands = 60'000;
const cv::Size whole{6000, 5000};
const cv::Size photo{4000, 3000};

cv::Point offset(cv::RNG& random, int reach) {
    return {random.uniform(-reach, reach), random.uniform(-reach, reach)};
}

// One large scene that the photos are cut from.
cv::Mat draw_scene() {
    cv::RNG random{20261107};
    cv::Mat scene{whole, CV_8UC3, cv::Scalar{70, 80, 95}};
    for (int i = 0; i < strands; ++i) {
        const cv::Point root{random.uniform(0, whole.width), random.uniform(0, whole.height)};
        const cv::Point middle = root + offset(random, 300);
        const cv::Point end = middle + offset(random, 300);
        const double light = random.uniform(0.2, 1.0);
        const cv::Scalar colour{110 * light, 150 * light, 200 * light};
        const int width = random.uniform(1, 5);
        cv::line(scene, root, middle, colour, width, cv::LINE_AA);
        cv::line(scene, middle, end, colour, width, cv::LINE_AA);
    }
    cv::GaussianBlur(scene, scene, {0, 0}, 1.2);
    return scene;
}

cv::Mat take_photo(const cv::Mat& scene, int number) {
    cv::RNG random{static_cast<std::uint64_t>(number) + 1};
    const cv::Point corner{random.uniform(0, whole.width - photo.width),
                           random.uniform(0, whole.height - photo.height)};
    cv::Mat grain{photo, CV_16SC3};
    random.fill(grain, cv::RNG::NORMAL, 0, 3 + number % 4);
    cv::Mat picture;
    cv::add(scene(cv::Rect{corner, photo}), grain, picture, cv::noArray(), CV_8U);
    return picture;
}

}  // namespace

int main(int count, char** words) {
    if (count != 3) {
        std::cerr << "Usage: bench_photos FOLDER COUNT\n";
        return 2;
    }
    const std::filesystem::path folder = words[1];
    std::filesystem::create_directories(folder);
    const cv::Mat scene = draw_scene();
    for (int number = 1; number <= std::stoi(words[2]); ++number) {
        const auto file = folder / ("IMG_" + std::to_string(1000 + number) + ".jpg");
        cv::imwrite(file.string(), take_photo(scene, number), {cv::IMWRITE_JPEG_QUALITY, 88});
    }
}
