#pragma once

#include "app/qturn/reply.h"
#include "indexer/looks/wedding_board.h"

namespace quarterturn {

// The board in words: client after client in the order of work.
Reply board_reply(const WeddingBoard& board);

}  // namespace quarterturn
