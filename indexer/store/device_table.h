#pragma once

#include <optional>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

class DeviceTable {
  public:
    explicit DeviceTable(Database& database) : database_(&database) {}

    // The device with these words, added when new. clock_shift is not looked at.
    DeviceId find_or_add(const Device& device);
    std::optional<Device> find(DeviceId id);
    std::vector<Device> all();

  private:
    Database* database_;
};

}  // namespace quarterturn
