#pragma once
// Looking for faces in photos that nobody has looked at yet, and the questions that come of it.

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct HeadReport {
    int looked_at = 0;
    std::vector<std::string> failed;  // sentences that name the photo
    bool stopped = false;             // what was done is kept
};

// Looks at the small pictures; not in a library that is only to be looked at, as what was seen
// could not be kept. `progress` is told how many photos of how many. Throws std::runtime_error when
// the face cascades are not installed.
HeadReport look_for_heads(Library& library, Decoder& decoder,
                          const std::function<void(std::int64_t, std::int64_t)>& progress = {},
                          std::stop_token stop = {});

// In these photos alone, where nobody has looked yet.
HeadReport look_for_heads_in(Library& library, Decoder& decoder, std::vector<Photo> photos,
                             const std::function<void(std::int64_t, std::int64_t)>& progress = {},
                             std::stop_token stop = {});

struct TagQuestion {
    PhotoId photo;
    std::string question;
};

// Where the tags and the picture disagree, in the order of the photos.
std::vector<TagQuestion> tag_questions(std::span<const Photo> photos);

}  // namespace quarterturn
