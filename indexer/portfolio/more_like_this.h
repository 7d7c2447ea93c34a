#pragma once
// Her own looks that are most like a pair of hers, or like a picture from elsewhere.

#include <functional>
#include <stop_token>

#include "indexer/image/decode.h"
#include "indexer/rules/likeness.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct MeasureReport {
    int measured = 0;
    std::vector<std::string> failed;  // sentences that name the photo
    bool stopped = false;             // what was done is kept
};

// Measures the hair in the second photos of pairs that were not measured yet, from the small
// pictures; none where nothing can be kept. Some hundredths of a second each. `progress` is told
// how many photos of how many. Throws StoreError, and std::runtime_error when the face cascades are
// not installed.
MeasureReport measure_hair(Library& library, Decoder& decoder,
                           const std::function<void(std::int64_t, std::int64_t)>& progress = {},
                           std::stop_token stop = {});

// By facts and by picture; pairs of the same look are left out, and so are those that she refused.
// Only what was measured is compared by picture. The likest first, so many at most. Throws
// StoreError.
std::vector<LikePair> pairs_like(Library& library, const Pair& pair, std::size_t at_most);

// A picture from elsewhere, small and upright by its EXIF orientation. Throws DiskError when the
// file cannot be read, and std::runtime_error with a sentence when it is no picture.
cv::Mat small_picture_in(Library& library, Decoder& decoder, const Path& file);

// By picture alone, taken upright by its EXIF orientation. With an angle, only pairs from there.
// Throws DiskError when the file cannot be read, and std::runtime_error with a sentence when it is
// no picture or shows no head that can be found.
std::vector<LikePair> pairs_like(Library& library, Decoder& decoder, const Path& picture,
                                 std::optional<Angle> angle, std::size_t at_most);

}  // namespace quarterturn
