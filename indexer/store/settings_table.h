#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "indexer/store/database.h"

namespace quarterturn {

// Named texts of the library. Those that she sets are told in library_settings.h.
class SettingsTable {
  public:
    explicit SettingsTable(Database& database) : database_(&database) {}

    std::optional<std::string> get(std::string_view name);
    void set(std::string_view name, std::string_view value);
    void clear(std::string_view name);  // as if it had never been set

  private:
    Database* database_;
};

}  // namespace quarterturn
