#pragma once
// As agreed, as made: for each client and angle the photo of the trial beside that of the day, both
// heads equally large and in the same place.

#include <functional>

#include "indexer/looks/as_made.h"
#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

// Two pairs stand in a row; which photo is which, and when it was taken, is written below it, so
// that nothing hangs on colour and any printer will do. Below a pair stand the hints, below the
// pairs what changed in the recipe since sign-off. A client begins where her first row still fits.
// An angle without one of the photos has an empty frame that says so; one without both is left out.
// Throws StoreError where no look has any photo.
// Takes some tenths of a second a pair. `progress` is told how many pairs of how many are done.
Document as_made_sheet(Library& library, Decoder& decoder, TextRuler& ruler, WeddingId wedding,
                       Paper paper, const std::function<void(int, int)>& progress = {});

}  // namespace quarterturn
