#pragma once

#include <stop_token>

#include "indexer/store/database.h"

namespace quarterturn {

// While it lives, a statement of the database throws StoreError soon after `stop` is asked for.
class UntilStopped {
  public:
    UntilStopped(Database& database, std::stop_token stop);
    ~UntilStopped();
    UntilStopped(const UntilStopped&) = delete;
    UntilStopped& operator=(const UntilStopped&) = delete;

  private:
    Database& database_;
    std::stop_token stop_;
};

}  // namespace quarterturn
