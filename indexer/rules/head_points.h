#pragma once

#include <optional>
#include <string>

#include "indexer/record/board.h"
#include "indexer/record/words.h"

namespace quarterturn {

// A head is at least so much of a photo's height from the hair's top to chin or nape: less is a
// slip of the hand, and too few pixels to compare (chosen). Between two photos of one angle heads
// differ by 1.3 at most in the demo photos; by more than this one of them is set wrong (chosen).
inline constexpr double least_head = 0.04;
inline constexpr double most_between_heads = 8;

// Why two points cannot show where a head stands in a photo of this angle, as a sentence: both in
// one place or nearly, or the top of the hair below the chin or nape. From above a head may lie any
// way round.
std::optional<std::string> reason_against(const HeadPoints& points, std::optional<Angle> angle);

// Why the heads of two photos cannot be laid upon each other: one is set so many times as large, in
// heights of their photos. Empty when they can.
std::optional<std::string> reason_against_sizes(double first_head, double second_head);

}  // namespace quarterturn
