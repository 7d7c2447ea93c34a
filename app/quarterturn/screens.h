#pragma once

#include <vector>

#include "ui/shell/screen.h"

namespace quarterturn {

// The moments in the row at the top, in their order. A screen is added by one line here.
std::vector<ScreenEntry> all_screens();

}  // namespace quarterturn
