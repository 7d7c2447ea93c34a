#pragma once
// A window for two laid pictures that neither leaves a corner of empty.

#include <optional>

#include "indexer/image/similarity.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// Two pictures, the second laid upon the first; lengths in heights of the first.
struct TwoLaid {
    double first_aspect = 1;  // width over height
    double second_aspect = 1;
    Similarity second_onto_first;
};

bool both_fill(const TwoLaid& two, const Box& window);

// `wanted`, moved as little as it takes for both pictures to fill it while all of `head` stays in
// it. Nothing where it cannot be: then it must be smaller, or a corner stays empty.
std::optional<Box> moved_inside(const TwoLaid& two, const Box& wanted, const Box& head);

}  // namespace quarterturn
