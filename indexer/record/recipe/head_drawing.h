#pragma once
// Parting and sections, in words and as a drawing on the head seen from above, as the stylist
// behind the chair sees it: x from -1 at the client's left to 1 at her right, y from -1 at the
// front to 1 at the back, the crown at 0, 0.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/recipe/words.h"

namespace quarterturn {

struct PartingLine {
    std::optional<PartingSide> side;
    std::optional<double> from_centre_cm;

    bool operator==(const PartingLine&) const = default;
};

struct PlanPoint {
    double x = 0;
    double y = 0;

    bool operator==(const PlanPoint&) const = default;
};

struct Stroke {
    StrokeKind kind = StrokeKind::parting;
    std::vector<PlanPoint> points;

    bool operator==(const Stroke&) const = default;
};

struct PlanMark {
    int number = 1;
    PlanPoint at;
    std::string words;

    bool operator==(const PlanMark&) const = default;
};

struct HeadDrawing {
    std::vector<Stroke> strokes;
    std::vector<PlanMark> marks;

    bool operator==(const HeadDrawing&) const = default;
};

}  // namespace quarterturn
