#pragma once
// Two photos of one angle as they stand on a sheet.

#include <array>

#include "indexer/image/light_difference.h"
#include "indexer/looks/as_made.h"
#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

inline constexpr double pair_cell_shape = 0.8;  // width over height: a head with its hair

struct PairOnPaper {
    AgreedPair pair;
    std::array<cv::Mat, 2> pictures;  // agreed and made; empty where they are not laid
    std::vector<std::string> remarks;
};

// What cells of so many pixels show of the two through a window of their proportions, the second
// laid upon the first; empty where one cannot be decoded. A quiet ground where a photo does not
// reach. `even`: lights the second as the first.
std::array<cv::Mat, 2> cut_pair(Library& library, Decoder& decoder, const LaidPair& laid,
                                const std::array<const Photo*, 2>& photos, cv::Size cell,
                                const Box& window, const std::optional<LightDifference>& even = {});

// Where there are both photos: lays them, cuts from each what its cell shows, in pixels, and says
// what there is to hint at. Throws StoreError.
void lay_on_paper(Library& library, Decoder& decoder, HeadFinder& finder, PairOnPaper& shown,
                  cv::Size cell);

}  // namespace quarterturn
