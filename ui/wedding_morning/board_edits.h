#pragma once
// What she sets down at the board.

#include "indexer/looks/wedding_board.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// A step of the build is done, or, with `done` false, is not done after all.
Edit change_step(WeddingId wedding, LookId look, const StepTick& step, bool done);

// All of a client without steps to tick.
Edit change_client(WeddingId wedding, const Client& client, bool done);

Edit start_timer(const Timer& timer);
Edit stop_timer(const Timer& timer);

}  // namespace quarterturn
