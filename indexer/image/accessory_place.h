#pragma once
// How far what is worn in the hair sits from where it sat in another picture of the head: a hint.

#include <optional>

#include "indexer/image/head_alignment.h"

namespace quarterturn {

struct AccessoryMove {
    double right = 0;   // cm, to the right of the picture
    double higher = 0;  // cm

    double length() const;
};

struct AccessoryPlace {
    // Its middle in each, in heights of the first picture, the second laid upon the first; nothing
    // where nothing stands out from the hair.
    std::optional<Spot> first;
    std::optional<Spot> second;
    // Nothing when it cannot be told.
    std::optional<AccessoryMove> move;

    // Of the pairs of unflawed demo photos that show no difference, none is measured to differ by
    // more than 0.45 cm; see tests/accuracy/accessory_place_test.cpp. A comb and pearls moved
    // by 1.8 and 2 cm within such photos were told 0.6 cm off at most from the left, and 1.0 cm
    // from behind, where a head down to its nape is taken for too tall.
    static constexpr double least_centimetres = 1.0;
    bool differs() const;
};

// Accessory: what is lighter than the hair, smaller than a lock of it and has hair around it, such
// as pearls, leaves or blossoms. Its pieces may lie apart; the whole pattern of them is sought in
// the second picture. `first_points`: where the head of the first stands; its height is taken to be
// 23 cm, as in hair_height.h.
AccessoryPlace accessory_place(const cv::Mat& first, const cv::Mat& second,
                               const HeadAlignment& alignment, const HeadPoints& first_points);

}  // namespace quarterturn
