#pragma once
// Which two photos of a look belong beside each other: before with after, the trial with the
// wedding day, one trial with the next; for each angle one pair of each at most.
//
// Only usable photos are paired. Of those that could stand, the frames that are nearly as sharp as
// the sharpest go on, and of these the two whose framing and light are closest.

#include <span>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/record/people.h"
#include "indexer/record/photo.h"

namespace quarterturn {

// Of the sharpest frame's focus. Chosen by measurement: of the five frames of the demo burst the
// sharpest alone goes on (the next reaches 0.68 of it), and so does the same shot by the other
// camera (0.92).
inline constexpr double nearly_as_sharp = 0.8;

// How unlike two photos are taken, 0 for alike: the difference of their mean light in EV (luma to
// the power of 2.2, as sRGB nearly is), of the shape of the picture (the proportion's logarithm to
// the base 2), half a step for another device, and half a step for another day. Common practice.
double unlikeness(const Photo& one, const Photo& other);

struct LookToPair {
    Look look;
    std::optional<Date> wedding_date;
    std::vector<Sitting> sittings;  // of the look and of its photos, in any order
    std::vector<Photo> photos;      // may hold photos of other looks
    std::vector<Pair> places;       // what she chose: `choice` by `made.place`
};

// In the order of places. Photos without a sitting are before or after photos of the look, but of
// no trial. The trial beside the wedding day is the latest that has a photo of the angle.
std::vector<MadePair> make_pairs(const LookToPair& look);

}  // namespace quarterturn
