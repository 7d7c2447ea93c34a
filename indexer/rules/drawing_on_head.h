#pragma once
// Drawing on the head seen from above (record/recipe/head_drawing.h): what a hand draws becomes few
// points, and what is drawn can be found and taken out again. Distances are in half-widths of the
// head, as the points are.

#include <optional>
#include <vector>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

// The nearest point on the head, to a hundredth: outside of it, its edge.
PlanPoint on_head(PlanPoint point);

// A line drawn by hand, smoothed and thinned: no part of it lies further than hand_tolerance from
// what was drawn, and it begins and ends where the hand did. The thinning is that of Ramer (1972)
// and of Douglas and Peucker (1973).
std::vector<PlanPoint> drawn_line(const std::vector<PlanPoint>& trail);
inline constexpr double hand_tolerance = 0.1;  // chosen by trying: a shaky hand looks calm

// A line of these points as it is kept: a section whose ends nearly meet goes all the way round.
Stroke stroke_of(StrokeKind kind, std::vector<PlanPoint> points);
inline constexpr double closing_distance = 0.15;  // between its ends
bool goes_round(const Stroke& stroke);

// Strokes and marks in one row: first the strokes, then the marks.
std::size_t things_drawn(const HeadDrawing& drawing);
// The nearest one within this distance of the point; of equals the one drawn last.
std::optional<std::size_t> thing_at(const HeadDrawing& drawing, PlanPoint point, double within);
// Throws std::out_of_range.
HeadDrawing without_thing(HeadDrawing drawing, std::size_t thing);

// The lowest number that no mark has, from 1: marks keep theirs, since steps may speak of them.
int free_number(const HeadDrawing& drawing);

}  // namespace quarterturn
