#pragma once

#include <optional>

#include "indexer/record/words.h"

class QKeyEvent;

namespace quarterturn {

// Where an arrow key leads: up to the front, down to the back, left and right as they are; with
// Shift to the further angles, as going round the head.
std::optional<Angle> angle_of_arrow(const QKeyEvent& event);

}  // namespace quarterturn
