#pragma once
// A photo shown so that it leaves her face out, as the stylist confirmed it by eye.

#include <optional>
#include <string>
#include <string_view>

#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

enum class HairOnlyWay { crop, cover };
std::string_view word(HairOnlyWay way);  // "crop", "cover"
std::optional<HairOnlyWay> parse_hair_only_way(std::string_view text);

struct HairOnly {
    PhotoId photo;
    HairOnlyWay way = HairOnlyWay::crop;
    // What is kept of the picture, or what lies under the soft cover: in shares of the width and
    // height of the picture upright and, with `mirrored`, turned the right way round.
    double x = 0;
    double y = 0;
    double width = 1;
    double height = 1;
    bool mirrored = false;  // as the photo was tagged
    std::string sha256;     // of the picture that she looked at
    LocalTime confirmed_at{};

    bool operator==(const HairOnly&) const = default;
};

}  // namespace quarterturn
