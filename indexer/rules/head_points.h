#pragma once

#include <optional>
#include <string>

#include "indexer/record/board.h"
#include "indexer/record/words.h"

namespace quarterturn {

// Why two points cannot show where a head stands in a photo of this angle, as a sentence: both in
// one place, or the top of the hair below the chin or nape. From above a head may lie any way round.
std::optional<std::string> reason_against(const HeadPoints& points, std::optional<Angle> angle);

}  // namespace quarterturn
