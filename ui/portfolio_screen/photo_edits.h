#pragma once
// What she says of photos on their way out, and which she chooses.

#include "indexer/record/credit.h"
#include "indexer/record/selection.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// `credit`: nothing takes back what was said.
Edit say_whose(const std::vector<PhotoId>& photos, const std::optional<Credit>& credit);
Edit say_seen(PhotoId photo, const Seen& seen);

// Instead of what had the name before.
Edit keep_selection(const PhotoSelection& selection);
Edit rename_selection(const PhotoSelection& selection, const std::string& name);
Edit forget_selection(const PhotoSelection& selection);

}  // namespace quarterturn
