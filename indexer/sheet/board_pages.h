#pragma once
// The two halves of a look on the board: the front with its photos, and its recipe.

#include "indexer/looks/board_words.h"
#include "indexer/sheet/flow.h"

namespace quarterturn {

// A look of the board with what belongs to it.
struct LookPage {
    const WeddingBoard& board;
    const BoardClient& client;
    const BoardLook* look = nullptr;  // nothing: she has none
    std::vector<SheetCell> cells;     // for the look's shots, with heads found
};

// Each begins where the flow stands, at the top of a page.
void put_board_front(SheetFlow& flow, const LookPage& page);
void put_board_recipe(SheetFlow& flow, const LookPage& page);

}  // namespace quarterturn
