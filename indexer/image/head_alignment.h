#pragma once
// Two pictures of a head from the same angle, laid one upon the other: both heads equally large and
// in the same place. Never stretched.

#include <opencv2/core.hpp>
#include <optional>

#include "indexer/image/head.h"
#include "indexer/image/similarity.h"

namespace quarterturn {

// Of the way heads are laid upon each other: what was kept of another is found anew.
inline constexpr int head_alignment_version = 2;

struct HeadAlignment {
    Similarity second_onto_first;
    // How far head and hair as a whole agree then, -1 … 1; see image/slopes.h.
    double agreement = 0;
    bool by_hand = false;  // laid on the points that she set in both
    bool certain = false;  // found in ways that confirm each other

    // Of all pairs of the demo photos from one angle, those of the same hairdo agree by 0.43 at
    // least, flawed photos and all. Those that the whole lays quite wrongly (hair down upon hair up
    // from behind) agree by 0.32 at most. Chosen between the two; see
    // tests/accuracy/head_alignment_test.cpp.
    static constexpr double least_agreement = 0.37;
    bool sure() const { return by_hand || certain; }
};

// One of the two pictures.
struct HeadPicture {
    cv::Mat bgr;                       // CV_8UC3, upright and the right way round
    std::optional<HeadPoints> points;  // where she has shown the head by hand
};

// Points in both pictures settle it. Else the heads are found (points in one of them say where to
// begin), and laid upon each other by the directions of edges: of the whole head where the hairdo
// is the same, else of the bare skin of the faces, which stays as it is when the hair is done
// otherwise: once with the skin of each, and sure only when both ways say the same. Where no face
// shows and the hair is done otherwise, the top of the head and the shoulders lay them upon each
// other; that is near, but not called sure: see tests/accuracy/before_and_after_alignment_test.cpp.
// Takes up to a second. Throws std::invalid_argument when a picture is empty.
HeadAlignment align_heads(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second);

// The head in a picture, in heights of it: as found, else the middle of the picture. The lower
// point is the chin, or about the nape where no face shows.
HeadPoints likely_points(HeadFinder& finder, const cv::Mat& bgr);

}  // namespace quarterturn
