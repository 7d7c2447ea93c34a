#pragma once
// The four quarters of the head as one small ring: the same everywhere a look is shown.

#include <array>

#include "indexer/rules/coverage.h"

namespace quarterturn {

// In the order of quarter_angles. A quarter stands as its worst required line does: missing, weak,
// waived, covered. A quarter of which nothing is required stands as its nice-to-have lines do, and
// as waived when the shot list does not ask for it at all.
std::array<Coverage, 4> ring_quarters(const CoverageReport& report);

}  // namespace quarterturn
