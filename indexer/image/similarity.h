#pragma once
// Turn, one scale and shift: what lays one picture of a head upon another without stretching it.

#include <optional>
#include <span>

#include "indexer/record/board.h"

namespace quarterturn {

// A place in a picture, upright and the right way round: from its upper left corner, in heights of
// the picture both ways, so that a length is the same whichever way it lies.
struct Spot {
    double x = 0;
    double y = 0;
};

// `aspect`: the picture's width over its height.
Spot spot_of(const PicturePoint& point, double aspect);
PicturePoint point_of(const Spot& spot, double aspect);
double distance(const Spot& one, const Spot& other);

// Lays spots of one picture upon those of another.
struct Similarity {
    double along = 1;   // scale times cosine of the turn
    double across = 0;  // scale times sine of it; x towards y, which is clockwise as one sees it
    double x = 0;
    double y = 0;

    Spot operator()(const Spot& spot) const;
    double scale() const;
    double turn() const;  // radians, clockwise
    Similarity inverse() const;
};

// The one that lays `from` upon `onto` with the least squares of what remains (Umeyama, 1991,
// without mirroring); with two spots each they meet exactly. Nothing when the spots of one side
// fall together. Throws std::invalid_argument unless both have the same number, two or more.
std::optional<Similarity> fit_similarity(std::span<const Spot> from, std::span<const Spot> onto);

}  // namespace quarterturn
