#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/sign_off.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Sign-offs are only ever added; reopening writes the reason beside the newest.
class SignOffTable {
  public:
    explicit SignOffTable(Database& database) : database_(&database) {}

    SignOffId add(const SignOff& sign_off);                             // refuses while one stands
    void reopen(LookId look, std::string_view because, LocalTime now);  // refuses when none stands
    std::optional<SignOff> standing(LookId look);                       // signed and not reopened
    std::vector<SignOff> all(LookId look);                              // oldest first
    std::optional<LookId> sealed_in(PhotoId photo);  // the look whose standing seal names it

  private:
    Database* database_;
};

}  // namespace quarterturn
