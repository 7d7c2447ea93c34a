#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/look_facts.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What looks can be found by. What she says of a fact goes before all that was read of it. All
// functions throw StoreError.
class LookFactTable {
  public:
    explicit LookFactTable(Database& database) : database_(&database) {}

    // Replaces what was read out of the records of each look.
    void keep_read(const std::map<LookId, LookFacts>& facts);
    // What she says of one fact, instead of what she said before; nothing: what was read holds.
    // Refuses an empty value, and a fact that follows from the records.
    void say(LookId look, Fact fact, std::span<const std::string> values);

    // Those that hold, in the order of facts and values.
    LookFacts of(LookId look);
    std::map<LookId, LookFacts> all();

  private:
    Database* database_;
};

}  // namespace quarterturn
