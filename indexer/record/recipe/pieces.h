#pragma once
// What is put into the hair beside pins, and how the surface is finished.

#include <optional>
#include <string>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

struct Piece {
    PieceKind kind = PieceKind::accessory;
    std::string what;
    std::string colour;
    std::optional<int> count;  // nothing is one
    std::string brought_by;
    std::string where;            // in words: "under the padding"
    std::optional<PlanPoint> at;  // on the head plan
    std::string photo;            // SHA-256, or empty

    bool operator==(const Piece&) const = default;
};

struct FinishDetails {
    std::optional<Hold> spray;
    std::string smoothing;
    std::string shine;

    bool operator==(const FinishDetails&) const = default;
};

}  // namespace quarterturn
