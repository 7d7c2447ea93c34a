#pragma once

#include <vector>

#include "indexer/record/board.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What is set down at the board of a wedding. All functions throw StoreError.
class BoardTable {
  public:
    explicit BoardTable(Database& database) : database_(&database) {}

    void tick(WeddingId wedding, LookId look, const StepTick& tick);  // or anew with other words
    void untick(WeddingId wedding, LookId look, int number);
    std::vector<StepTick> ticks(WeddingId wedding, LookId look);  // by number

    // With the number of the timer, or a new one where it has none; answers it.
    TimerId start(const Timer& timer);
    void stop(TimerId timer);
    std::vector<Timer> timers(WeddingId wedding);  // by when they end

  private:
    Database* database_;
};

}  // namespace quarterturn
