#pragma once
// The four quarters of the head as one small ring: the same everywhere a look is shown.

#include "indexer/rules/coverage.h"

namespace quarterturn {

// A quarter stands as its worst required line does: missing, weak, waived, covered; where one is
// missing and another is there, it is partly covered. A quarter of which nothing is required stands
// as its nice-to-have lines do, and as waived when the shot list does not ask for it at all.
Ring ring_of(const CoverageReport& report);

}  // namespace quarterturn
