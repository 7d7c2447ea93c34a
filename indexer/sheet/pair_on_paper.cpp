#include "indexer/sheet/pair_on_paper.h"

#include <opencv2/imgproc.hpp>

#include "indexer/sheet/even_light.h"

namespace quarterturn {
namespace {

const cv::Scalar quiet_ground{0xec, 0xf0, 0xf2};  // BGR, a little darker than the paper

// What the cell shows of a picture. `lay`: from heights of the picture to heights of the window.
cv::Mat in_cell(const cv::Mat& picture, const Similarity& lay, const Box& window, cv::Size cell) {
    const double scale = cell.height / window.height;
    const double pixel = 1.0 / picture.rows;
    const cv::Matx23d place(lay.along * pixel * scale, -lay.across * pixel * scale,
                            (lay.x - window.x) * scale, lay.across * pixel * scale,
                            lay.along * pixel * scale, (lay.y - window.y) * scale);
    cv::Mat shown;
    cv::warpAffine(picture, shown, place, cell, cv::INTER_AREA, cv::BORDER_CONSTANT, quiet_ground);
    return shown;
}

}  // namespace

std::array<cv::Mat, 2> cut_pair(Library& library, Decoder& decoder, const LaidPair& laid,
                                const std::array<const Photo*, 2>& photos, cv::Size cell,
                                const Box& window, const std::optional<LightDifference>& even) {
    const int enough = cvRound(cell.height / window.height);
    const std::array lays{Similarity{}, laid.alignment.second_onto_first};
    std::array<cv::Mat, 2> pictures;
    for (std::size_t side = 0; side < photos.size(); ++side) {
        Decoded decoded = right_way_round(library, decoder, *photos[side], enough);
        if (even && side == 1 && decoded.ok()) decoded.bgr = lit_as_first(decoded.bgr, *even);
        if (decoded.ok()) pictures[side] = in_cell(decoded.bgr, lays[side], window, cell);
    }
    return pictures;
}

void lay_on_paper(Library& library, Decoder& decoder, HeadFinder& finder, PairOnPaper& shown,
                  cv::Size cell) {
    if (!shown.pair.both()) return;
    const std::array<const Photo*, 2> photos{&*shown.pair.agreed, &*shown.pair.made};
    const LaidPair laid = lay_pair(library, decoder, finder, *photos[0], *photos[1]);
    if (!laid.refused.empty()) return shown.remarks.push_back(laid.refused);
    const Box window = window_of(laid, static_cast<double>(cell.width) / cell.height);
    shown.pictures = cut_pair(library, decoder, laid, photos, cell, window);
    for (std::string& hint : hint_words(laid)) shown.remarks.push_back(std::move(hint));
}

}  // namespace quarterturn
