#pragma once

// What is known about each photo because it was made: for tests to check
// against. Columns are described in demo_photos/README.md.

#include "demo_photos/head.h"
#include "demo_photos/story/shots.h"

#include <iosfwd>

namespace quarterturn::demo {

std::string truth_header();
std::string truth_row(const Shot& shot, const Marks& marks, cv::Size upright);

/// The stylist's tags for the photos that belong to a look, as JSON.
std::string tags_json(const std::vector<Shot>& shots);

}  // namespace quarterturn::demo
