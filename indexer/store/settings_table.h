#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "indexer/store/database.h"

namespace quarterturn {

// The setting that holds the line printed at the foot of every page: her business's name and how to
// reach it.
inline constexpr std::string_view business_line_setting = "business line";

// Named texts of the library, such as her business line.
class SettingsTable {
  public:
    explicit SettingsTable(Database& database) : database_(&database) {}

    std::optional<std::string> get(std::string_view name);
    void set(std::string_view name, std::string_view value);

  private:
    Database* database_;
};

}  // namespace quarterturn
