#pragma once

#include "demo_photos/story/sitters.h"

namespace quarterturn::demo {

/// Where somebody with a phone would stand for an angle: never twice exactly
/// the same place. `number` makes the small differences.
View view_for(const std::string& angle, Who who, Style style, std::uint32_t number);

View detail_of_bun(Who who);

}  // namespace quarterturn::demo
