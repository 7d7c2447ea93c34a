#pragma once
// Demo photos that show the same: of one look, stage after, and one angle, without a flaw. Nothing
// that is measured between two of them differs.

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "tests/support/demo_truth.h"

namespace quarterturn {

// Throws std::runtime_error when there is none.
inline CsvRow demo_row(const std::string& file) {
    const auto rows = demo_truth();
    const auto row =
        std::ranges::find(rows, file, [](const CsvRow& each) { return each.at("file"); });
    if (row == rows.end()) throw std::runtime_error("no demo photo " + file);
    return *row;
}

struct AlikePhoto {
    CsvRow row;
    cv::Mat picture;  // the right way round, its long edge 512

    const std::string& file() const { return row.at("file"); }
};

// `visit(first, second)` for each two of them.
template <class Visit>
void for_alike_photos(Visit visit) {
    std::vector<AlikePhoto> photos;
    for (const CsvRow& row : demo_truth()) {
        if (row.at("stage") != "after" || row.at("angle") == "detail") continue;
        if (row.at("flaw") != "none") continue;
        photos.push_back({row, demo_picture(row, 512)});
        if (row.at("mirrored") == "1") cv::flip(photos.back().picture, photos.back().picture, 1);
    }
    for (std::size_t i = 0; i < photos.size(); ++i) {
        for (std::size_t j = i + 1; j < photos.size(); ++j) {
            const CsvRow& one = photos[i].row;
            const CsvRow& other = photos[j].row;
            if (one.at("look") == other.at("look") && one.at("angle") == other.at("angle")) {
                visit(photos[i], photos[j]);
            }
        }
    }
}

}  // namespace quarterturn
