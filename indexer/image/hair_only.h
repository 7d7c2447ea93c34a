#pragma once
// Leaving a face out of a picture: a crop of the hair alone, or a soft cover over the face. Where a
// face is comes from the search for faces and from the side the photo was taken from; both can be
// wrong, so that somebody has to look at what comes of it.

#include <opencv2/core.hpp>
#include <optional>
#include <span>
#include <vector>

#include "indexer/record/hair_only.h"
#include "indexer/record/words.h"

namespace quarterturn {

struct HeadInPicture {
    cv::Size picture;                   // pixels; upright, the right way round
    std::vector<cv::Rect> faces;        // that were found
    std::optional<cv::Rect> head;       // with its hair
    std::optional<Angle> angle;         // the photo was taken from
    std::optional<cv::Rect> skin = {};  // of the face and what hangs together with it
};

// Crops first, the one with most of the head first; then covers, where a face was found: of its
// skin alone, where that is known and smaller, and of all that may belong to the face. Crops
// that would leave less than a sixth of a side, or hardly any of the head, are left out. Without a
// face: from the back and from above the whole picture, from a side the half of the head that looks
// away. Empty where nothing tells what to leave out.
std::vector<HairOnly> ways_without_face(const HeadInPicture& shown);

// Whether it would show a good part of what may be a face in the whole picture, where the search
// sees more than in a part of it. `perhaps`: as HeadFinder::perhaps_faces sees them in the whole
// picture; one that no other agrees with is taken for hair.
bool shows_perhaps_face(const HairOnly& how, cv::Size picture, std::span<const cv::Rect> perhaps);

// The part of it that is kept; or the picture with one even colour over the ellipse in the box,
// soft at its rim, so that nothing of what lies under it can be brought back.
cv::Mat without_face(const cv::Mat& bgr, const HairOnly& how);

}  // namespace quarterturn
