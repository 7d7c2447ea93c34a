#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "indexer/store/database.h"

namespace quarterturn {

// The names of what is printed at the foot of every page: her business, and a line on it.
inline constexpr std::string_view business_name_setting = "business name";
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
