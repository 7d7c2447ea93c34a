#pragma once
// Whether a tag and the picture disagree. It warns, never changes.

#include <optional>
#include <string>

#include "indexer/record/photo.h"

namespace quarterturn {

// A question to ask her, or nothing. Profiles: from the client's left side her face looks to the
// viewer's left; a photo tagged mirrored shows the other way round.
std::optional<std::string> disagreement(const Photo& photo);

}  // namespace quarterturn
