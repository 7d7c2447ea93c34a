#pragma once
// The records of a library as a stylist's grows over the years, for the benchmarks: the same work
// lies ahead of her in a small one and in a large one, only the past differs.

#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr int photos_of_a_wedding = 250;

// `photos` photos in an empty library, 250 to a wedding of four clients, who have ten looks between
// them with a trial and a recipe each; four pairs of a look, nine photos of each
// sitting that wait for their place, consents, credits and what went out. Weddings are a week
// apart, the last one nearly eight weeks after `today`, and none on it. Takes minutes for 250,000.
// Throws StoreError.
void fill_library(Library& library, int photos, Date today);

}  // namespace quarterturn
