#pragma once
// Lays one picture of a head upon another by the directions of their edges.

#include <opencv2/core.hpp>

#include "indexer/image/similarity.h"

namespace quarterturn {

// Where a head is thought to be, in heights of the picture.
struct HeadPlace {
    Spot middle;
    double width = 0;
    double height = 0;

    Spot bottom() const { return {middle.x, middle.y + height / 2}; }
};

struct LaidHead {
    Similarity second_onto_first;
    double agreement = 0;  // -1 … 1, see image/slopes.h
};

// The picture, its long edge `long_edge` pixels.
cv::Mat with_long_edge(const cv::Mat& bgr, int long_edge);

// The turn, scale and shift by which the two agree best where `weight` counts (CV_8UC1, 255 for
// all, of the first picture's proportions; empty: the head with hair that hangs and the shoulders
// beneath it). Sought around the places in three steps from coarse to fine, as orientation
// correlation (Fitch and others, 2002) does for shifts.
LaidHead lay_head(const cv::Mat& first, const cv::Mat& second, const HeadPlace& first_place,
                  const HeadPlace& second_place, const cv::Mat& weight = {});

}  // namespace quarterturn
