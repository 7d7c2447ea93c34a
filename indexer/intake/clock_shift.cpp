#include <cstdlib>

#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

std::string device_text(const Device& device) {
    if (device.model.starts_with(device.make)) return device.model;
    return device.make.empty() ? device.model : device.make + ' ' + device.model;
}

std::string count_text(std::int64_t count, const std::string& unit) {
    return std::to_string(count) + ' ' + unit + (count == 1 ? "" : "s");
}

// "1 hour 47 minutes"
std::string length_text(std::chrono::seconds length) {
    const std::int64_t total = std::abs(length.count());
    const std::array parts{std::pair{total / 3600, "hour"}, std::pair{total / 60 % 60, "minute"},
                           std::pair{total % 60, "second"}};
    std::string text;
    for (const auto& [count, unit] : parts) {
        if (count != 0) text += (text.empty() ? "" : " ") + count_text(count, unit);
    }
    return text;
}

std::string shift_text(const Device& device, std::chrono::seconds shift) {
    const std::string clock = "set the clock of " + device_text(device);
    if (shift.count() == 0) return clock + " back to what it says itself";
    return clock + ' ' + length_text(shift) + (shift.count() > 0 ? " forward" : " back");
}

Photo timed_photo(Library& library, PhotoId id) {
    const auto photo = library.photos().find(id);
    if (!photo) throw StoreError("There is no photo number " + std::to_string(id.value) + ".");
    if (!photo->moment) {
        throw StoreError(photo->file.name +
                         " carries no time, so it says nothing about a clock: "
                         "choose a photo with a time.");
    }
    return *photo;
}

}  // namespace

std::vector<ClockShift> propose_clock_shifts(Library& library) {
    std::unordered_map<DeviceId, std::chrono::seconds> shifted_already;
    std::vector<DevicePhotos> devices;
    for (const Device& device : library.devices().all()) {
        shifted_already[device.id] = device.clock_shift;
        DevicePhotos& of_device = devices.emplace_back(DevicePhotos{device.id, {}});
        for (const Photo& photo : library.photos().of_device(device.id)) {
            if (photo.moment) of_device.photos.push_back({photo.id, *photo.moment});
        }
    }
    std::vector<ClockShift> proposals = propose_clock_shifts(devices, library.sittings().all());
    for (ClockShift& proposal : proposals) proposal.shift += shifted_already[proposal.device];
    return proposals;
}

ClockShift clock_shift_from_pair(Library& library, PhotoId wrong, PhotoId right) {
    const Photo off = timed_photo(library, wrong);
    const Photo true_time = timed_photo(library, right);
    if (!off.file.device) {
        throw StoreError(off.file.name +
                         " does not say which camera took it, so no clock can be "
                         "set: place its photos by hand.");
    }
    return {.device = *off.file.device,
            .shift = shift_from_pair(off.file.taken->local, *true_time.moment),
            .because = off.file.name + " and " + true_time.file.name + " show the same moment."};
}

SortReport apply_clock_shift(Library& library, const ClockShift& shift) {
    const auto device = library.devices().find(shift.device);
    if (!device) {
        throw StoreError("There is no camera number " + std::to_string(shift.device.value) + ".");
    }
    library.history().apply({.said = shift_text(*device, shift.shift),
                             .tags = {},
                             .shifts = {{shift.device, shift.shift}}});
    return sort_by_time(library);
}

}  // namespace quarterturn
