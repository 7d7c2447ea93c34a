#pragma once

#include "demo_photos/head.h"

#include <string>

namespace quarterturn::demo {

/// The invented clients whose heads are photographed.
enum class Who { a, b, c };

/// A client's head in one state of the sitting. Stages other than the finished
/// style wear no accessory.
Sitter sitter_for(Who who, Style style);

}  // namespace quarterturn::demo
