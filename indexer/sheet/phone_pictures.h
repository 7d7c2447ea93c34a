#pragma once
// Pictures small enough to be carried within a page: JPEG in sRGB that says nothing of camera,
// place or time.

#include <cstddef>
#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

struct PhonePicture {
    std::vector<std::byte> jpeg;  // empty when there is a problem
    int width = 0;
    int height = 0;
    std::string problem;  // why there is no picture, without the file's name
};

struct PhonePictures {
    std::vector<PhonePicture> pictures;  // one for each photo
    bool fit = true;                     // all of them together within the budget
};

// Around the head, three wide and four high, where a head was found; else the whole photo. As large
// and as fine as fits into so many bytes, the same for all of them.
PhonePictures phone_pictures(const std::vector<SheetPhoto>& photos, std::size_t most_bytes,
                             Decoder& decoder, FileSystem& disk);

}  // namespace quarterturn
