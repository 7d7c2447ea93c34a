#pragma once

#include <span>
#include <string>

#include "indexer/looks/wedding_board.h"
#include "indexer/sheet/phone_pictures.h"

namespace quarterturn {

// Whose page it is, and when it was written.
struct Printed {
    std::string business;  // may be empty
    LocalTime now;
};

// The HTML of the page. `pictures` are those of the board's photos in their order; without any it
// has words alone.
std::string phone_html(const WeddingBoard& board, const Printed& printed,
                       std::span<const PhonePicture> pictures);

}  // namespace quarterturn
