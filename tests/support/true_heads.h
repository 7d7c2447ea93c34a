#pragma once
// The demo photos of whole heads with what is true of them: where the top of the hair and the chin
// or nape stand is known because the photos were made.

#include <cmath>
#include <opencv2/imgproc.hpp>
#include <utility>
#include <vector>

#include "indexer/image/head_alignment.h"
#include "tests/support/demo_truth.h"

namespace quarterturn {

struct TruePhoto {
    CsvRow row;
    HeadPicture picture;
    HeadPoints truth;  // the right way round

    bool is_like(const TruePhoto& other) const {
        const auto same = [&](const char* column) {
            return row.at(column) == other.row.at(column);
        };
        return same("client") && same("look") && same("stage") && same("angle");
    }
};

inline PicturePoint true_point(const CsvRow& row, const std::string& name) {
    PicturePoint point{std::stod(row.at(name + "_x")) / std::stod(row.at("width")),
                       std::stod(row.at(name + "_y")) / std::stod(row.at("height"))};
    if (row.at("mirrored") == "1") point.x = 1 - point.x;
    return point;
}

// Without details, which show no whole head.
inline std::vector<TruePhoto> heads_of_the_demo() {
    std::vector<TruePhoto> photos;
    for (const CsvRow& row : demo_truth()) {
        if (row.at("angle").empty() || row.at("angle") == "detail") continue;
        TruePhoto photo{row, {demo_picture(row, 512), {}}, {}};
        if (row.at("mirrored") == "1") cv::flip(photo.picture.bgr, photo.picture.bgr, 1);
        photo.truth = {true_point(row, "head_top"), true_point(row, "head_bottom")};
        photos.push_back(std::move(photo));
    }
    return photos;
}

struct Errors {
    double size = 0;   // share of the head's height
    double place = 0;  // of the middle between top and chin or nape, in heights of the head
};

inline Errors errors_of(const Similarity& lay, const TruePhoto& first, const TruePhoto& second) {
    const auto spots = [](const TruePhoto& photo) {
        const double aspect = static_cast<double>(photo.picture.bgr.cols) / photo.picture.bgr.rows;
        return std::pair(spot_of(photo.truth.top, aspect), spot_of(photo.truth.bottom, aspect));
    };
    const auto [top, bottom] = spots(first);
    const auto [second_top, second_bottom] = spots(second);
    const Spot laid_top = lay(second_top);
    const Spot laid_bottom = lay(second_bottom);
    const double height = distance(top, bottom);
    const Spot middle{(top.x + bottom.x) / 2, (top.y + bottom.y) / 2};
    const Spot laid_middle{(laid_top.x + laid_bottom.x) / 2, (laid_top.y + laid_bottom.y) / 2};
    return {std::abs(distance(laid_top, laid_bottom) / height - 1),
            distance(middle, laid_middle) / height};
}

}  // namespace quarterturn
