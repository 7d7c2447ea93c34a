#pragma once
// The computer's clock, for the faces: rules and records are given the time as an argument.

#include "indexer/record/time.h"

namespace quarterturn {

LocalTime local_now();  // whole seconds, by the computer's own time zone
std::chrono::sys_seconds utc_now();

}  // namespace quarterturn
