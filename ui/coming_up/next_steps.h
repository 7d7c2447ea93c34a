#pragma once

#include <QString>

#include "indexer/looks/coming_up.h"
#include "ui/shell/place.h"

namespace quarterturn {

// What the button says that takes the step, for one look of one client.
QString step_text(NextStep step);
// Where the step is taken.
Place step_place(NextStep step, const Look& look, const std::optional<Shot>& shot = std::nullopt);

}  // namespace quarterturn
