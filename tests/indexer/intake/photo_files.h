#pragma once
// Photo files as a phone or camera writes them, made for a test.

#include <exiv2/exiv2.hpp>
#include <fstream>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "indexer/disk/file_system.h"
#include "tests/support/files.h"

namespace quarterturn {

struct PhotoFile {
    std::string taken{};  // "2026:11:07 10:12:03"; empty: the file does not say
    std::string make = "Larkmoor";
    std::string model = "P3";
    std::string keyword{};
    int orientation = 1;
    cv::Size size{96, 128};
};

// Strokes and noise that differ from seed to seed.
inline cv::Mat picture(int seed, cv::Size size = {96, 128}) {
    cv::RNG random{static_cast<std::uint64_t>(seed) * 7919 + 1};
    cv::Mat bgr{size, CV_8UC3, cv::Scalar{90, 110, 140}};
    for (int i = 0; i < 40; ++i) {
        const cv::Point from{random.uniform(0, size.width), random.uniform(0, size.height)};
        const cv::Point to{random.uniform(0, size.width), random.uniform(0, size.height)};
        const cv::Scalar colour{random.uniform(0., 255.), random.uniform(0., 255.),
                                random.uniform(0., 255.)};
        cv::line(bgr, from, to, colour, 2, cv::LINE_AA);
    }
    return bgr;
}

inline void write_file(const Path& file, std::string_view text) {
    std::filesystem::create_directories(file.parent_path());
    std::ofstream{file, std::ios::binary} << text;
}

// By the name's ending: .jpg, .png, .tif, .webp.
inline void write_photo(const Path& file, int seed, const PhotoFile& says = {}) {
    std::filesystem::create_directories(file.parent_path());
    cv::imwrite(file.string(), picture(seed, says.size));
    const auto image = Exiv2::ImageFactory::open(file.string());
    auto& exif = image->exifData();
    if (!says.make.empty()) exif["Exif.Image.Make"] = says.make;
    if (!says.model.empty()) exif["Exif.Image.Model"] = says.model;
    if (!says.taken.empty()) exif["Exif.Photo.DateTimeOriginal"] = says.taken;
    exif["Exif.Image.Orientation"] = static_cast<std::uint16_t>(says.orientation);
    if (!says.keyword.empty()) image->xmpData()["Xmp.dc.subject"] = says.keyword;
    image->writeMetadata();
}

// Every file below a folder with its bytes, to see that nothing of it changed.
inline std::map<Path, Bytes> all_files(const Path& folder) {
    std::map<Path, Bytes> files;
    if (!std::filesystem::exists(folder)) return files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator{folder}) {
        if (entry.is_regular_file()) files.emplace(entry.path(), read_bytes(entry.path()));
    }
    return files;
}

}  // namespace quarterturn
