#pragma once
// Two pictures of a head from the same angle, laid one upon the other: both heads equally large and
// in the same place. Never stretched.

#include <opencv2/core.hpp>
#include <optional>

#include "indexer/image/head.h"
#include "indexer/image/similarity.h"

namespace quarterturn {

struct HeadAlignment {
    Similarity second_onto_first;
    // How far the two agree then, -1 … 1; see image/slopes.h.
    double agreement = 0;
    bool by_hand = false;  // laid on the points that she set in both

    // Of all pairs of the demo photos from one angle, those of the same hairdo agree by 0.43 at
    // least, flawed photos and all, and then size is right within 3 % and place within 2 % of the
    // head's height. Those laid quite wrongly (hair down upon hair up from behind) agree by 0.32 at
    // most. Chosen between the two; see tests/indexer/image/head_alignment_test.cpp.
    static constexpr double least_agreement = 0.37;
    bool sure() const { return by_hand || agreement >= least_agreement; }
};

// One of the two pictures.
struct HeadPicture {
    cv::Mat bgr;                       // CV_8UC3, upright and the right way round
    std::optional<HeadPoints> points;  // where she has shown the head by hand
};

// Points in both pictures settle it. Else the heads are found (points in one of them say where to
// begin), and the turn, scale and shift are sought by which the directions of edges agree best: in
// three steps from coarse to fine, as orientation correlation (Fitch and others, 2002) does for
// shifts. Takes some tenths of a second. Throws std::invalid_argument when a picture is empty.
HeadAlignment align_heads(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second);

// The head in a picture, in heights of it: as found, else the middle of the picture. The lower
// point is the chin, or about the nape where no face shows.
HeadPoints likely_points(HeadFinder& finder, const cv::Mat& bgr);

}  // namespace quarterturn
