#pragma once
// The small pictures in cache/: upright, in sRGB, JPEG, 512 px on the long edge, by checksum. They
// can be deleted at any time; one that is missing or damaged is made again from the photo.

#include <functional>
#include <opencv2/core.hpp>
#include <stop_token>

#include "indexer/image/decode.h"
#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr int thumbnail_long_edge = 512;  // pixels

// The picture no larger than `long_edge` pixels on its long edge.
cv::Mat shrink_to(const cv::Mat& bgr, int long_edge);
Bytes as_jpeg(const cv::Mat& small);

// Where the small picture lies, whether it is there or not.
Path thumbnail_file(const Library& library, std::string_view sha256);

// Writes the small picture beside what may be there already. A cache that cannot be written is no
// harm to the photos, so a failing disk is passed over here.
void keep_thumbnail(Library& library, std::string_view sha256, const Bytes& jpeg);

// The small picture as it is to be shown, but not turned round when the photo is tagged mirrored.
// Refused, with a sentence, when neither it nor the photo can be read.
Decoded thumbnail(Library& library, Decoder& decoder, const Photo& photo);

struct CacheReport {
    int made = 0;
    std::vector<std::string> failed;  // sentences that name the photo
    bool stopped = false;
};

// Makes every small picture that is not there. `progress` is told how many photos of how many.
CacheReport rebuild_cache(Library& library, Decoder& decoder,
                          const std::function<void(std::int64_t, std::int64_t)>& progress = {},
                          std::stop_token stop = {});

}  // namespace quarterturn
