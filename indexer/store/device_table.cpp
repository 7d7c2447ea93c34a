#include "indexer/store/device_table.h"

#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

const std::string select_devices = "SELECT id, make, model, serial, clock_shift FROM device ";

Device device_in(const Statement& row) {
    Device device;
    row.read(device.id, device.make, device.model, device.serial, device.clock_shift);
    return device;
}

}  // namespace

DeviceId DeviceTable::find_or_add(const Device& device) {
    run(*database_,
        "INSERT INTO device (make, model, serial) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
        device.make, device.model, device.serial);
    return Statement(*database_,
                     "SELECT id FROM device WHERE make = ? AND model = ? AND serial = ?")
        .with(device.make, device.model, device.serial)
        .value<DeviceId>()
        .value();
}

std::optional<Device> DeviceTable::find(DeviceId id) {
    return Statement(*database_, select_devices + "WHERE id = ?").with(id).first(device_in);
}

std::vector<Device> DeviceTable::all() {
    return Statement(*database_, select_devices + "ORDER BY make, model, serial").rows(device_in);
}

}  // namespace quarterturn
