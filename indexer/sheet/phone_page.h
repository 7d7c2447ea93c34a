#pragma once
// The wedding board for a phone: one HTML5 file that holds its pictures, needs no network and no
// script, and fetches nothing. It carries what a helper needs at the chair and no more: no address,
// no place, no number, no file's name, nothing of the camera.

#include <cstddef>
#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/looks/wedding_board.h"

namespace quarterturn {

inline constexpr std::size_t most_phone_bytes = 6'000'000;

struct PhonePage {
    std::string html;
    std::vector<std::string> problems;  // a sentence each: a photo not shown, a page too large
};

// Says that it stands as of `now`. Pictures are made smaller until the page is no larger than
// `most_bytes`.
PhonePage phone_page(const WeddingBoard& board, Library& library, Decoder& decoder, LocalTime now,
                     std::size_t most_bytes = most_phone_bytes);

}  // namespace quarterturn
