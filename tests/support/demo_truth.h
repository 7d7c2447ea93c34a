#pragma once
// The demo photos and what is true of them.

#include <filesystem>
#include <stdexcept>

#include "indexer/image/decode.h"
#include "tests/support/csv.h"
#include "tests/support/files.h"

namespace quarterturn {

inline std::vector<CsvRow> demo_truth() {
    auto rows = read_csv(QUARTERTURN_DEMO_PHOTOS "/truth.csv");
    if (rows.empty()) throw std::runtime_error("the demo photos have no truth.csv");
    return rows;
}

// Upright, as the import decodes it.
inline cv::Mat demo_picture(const CsvRow& row, int long_edge) {
    const std::filesystem::path photos = QUARTERTURN_DEMO_PHOTOS "/photos";
    const auto bytes = read_bytes(photos / row.at("file"));
    const int orientation = std::stoi(row.at("orientation"));
    const Decoded decoded = make_local_decoder()->decode({bytes, orientation, long_edge});
    if (!decoded.ok()) throw std::runtime_error(row.at("file") + ": " + decoded.refused);
    return decoded.bgr;
}

}  // namespace quarterturn
