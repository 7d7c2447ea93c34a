#include "app/qturn/names.h"

namespace quarterturn {
namespace {

template <class Key>
std::string at_or_number(const std::map<Key, std::string>& names, Key id) {
    const auto found = names.find(id);
    return found == names.end() ? number_text(id.value) : found->second;
}

}  // namespace

std::string device_name(const Device& device) {
    if (device.make.empty() && device.model.empty()) return "unknown";
    if (device.make.empty() || device.model.starts_with(device.make)) return device.model;
    return device.model.empty() ? device.make : device.make + ' ' + device.model;
}

std::string number_text(std::int64_t id) {
    return '#' + std::to_string(id);
}

Names::Names(Library& library) {
    for (const Client& client : library.clients().all()) clients_[client.id] = client.name;
    for (const Wedding& wedding : library.weddings().all()) weddings_[wedding.id] = wedding.name;
    for (const Look& look : library.looks().all()) looks_[look.id] = look.name;
    for (const Device& device : library.devices().all()) devices_[device.id] = device_name(device);
    for (const Sitting& sitting : library.sittings().all()) {
        sittings_[sitting.id] = std::string(word(sitting.kind)) + " of " + client(sitting.client) +
                                " on " + iso_text(date_of(sitting.starts));
    }
}

std::string Names::client(ClientId id) const {
    return at_or_number(clients_, id);
}
std::string Names::wedding(WeddingId id) const {
    return at_or_number(weddings_, id);
}
std::string Names::look(LookId id) const {
    return at_or_number(looks_, id);
}
std::string Names::sitting(SittingId id) const {
    return at_or_number(sittings_, id);
}
std::string Names::device(DeviceId id) const {
    return at_or_number(devices_, id);
}

}  // namespace quarterturn
