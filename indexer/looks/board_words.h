#pragma once
// What the board says, in words: the same on screen, on paper and on a phone.

#include "indexer/looks/wedding_board.h"

namespace quarterturn {

std::string ready_text(const BoardClient& client);  // "ready by 12:30", "no ready-by time"

// "In the chair 09:40 to 10:10 and 11:00 to 11:25, with stylist 2"; the stylist only where more
// than one works. Empty without a place in the running order.
std::string chair_text(const WeddingBoard& board, const BoardClient& client);

// When an evening look is made of the first, as its recipe or the first look's says: "18:30". Empty
// where neither says so.
std::string evening_time(const BoardClient& client, const BoardLook& look);

std::string pins_count_text(const BoardStep& step);  // "22 pins"; empty without any
std::string wait_text(const BoardStep& step);        // "15 min cooling"; empty without a wait
std::string all_pins_text(const BoardLook& look);    // "Pins: 14 of 22 in."; empty without any

// The drawing of the recipe with a mark where each accessory sits, unless she has set one there.
HeadDrawing drawing_with_accessories(const Recipe& recipe);

}  // namespace quarterturn
