#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

std::string device_text(const Device& device) {
    if (device.model.starts_with(device.make)) return device.model;
    return device.make.empty() ? device.model : device.make + ' ' + device.model;
}

std::string shift_text(const Device& device, std::chrono::seconds shift) {
    const std::string clock = "set the clock of " + device_text(device);
    if (shift.count() == 0) return clock + " back to what it says itself";
    return clock + ' ' + shift_size_text(shift) + (shift.count() > 0 ? " forward" : " back");
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

std::string declined_setting(DeviceId device) {
    return "clock shift declined, device " + std::to_string(device.value);
}

// Photos that came since move a proposal by little while they tell of the same shift.
bool is_declined(Library& library, const ClockShift& shift) {
    constexpr std::chrono::minutes alike{15};
    const auto declined = library.settings().get(declined_setting(shift.device));
    return declined &&
           std::chrono::abs(shift.shift - std::chrono::seconds(std::stoll(*declined))) <= alike;
}

}  // namespace

std::vector<ClockShift> propose_clock_shifts(Library& library) {
    std::vector<DevicePhotos> devices;
    for (const Device& device : library.devices().all()) {
        DevicePhotos& of_device =
            devices.emplace_back(DevicePhotos{device.id, {}, device.clock_shift});
        for (const Photo& photo : library.photos().of_device(device.id)) {
            if (photo.file.taken) of_device.photos.push_back({photo.id, photo.file.taken->local});
        }
    }
    auto shifts = propose_clock_shifts(devices, library.sittings().all());
    std::erase_if(shifts, [&](const ClockShift& shift) { return is_declined(library, shift); });
    return shifts;
}

void decline_clock_shift(Library& library, const ClockShift& shift) {
    library.settings().set(declined_setting(shift.device), std::to_string(shift.shift.count()));
}

ClockShift clock_shift_from_pair(Library& library, PhotoId wrong, PhotoId right) {
    const Photo off = timed_photo(library, wrong);
    const Photo true_time = timed_photo(library, right);
    if (!off.file.device) {
        throw StoreError(off.file.name +
                         " does not say which camera took it, so no clock can be "
                         "set: place its photos by hand.");
    }
    ClockShift shift;
    shift.device = *off.file.device;
    shift.shift = shift_from_pair(off.file.taken->local, *true_time.moment);
    shift.because = off.file.name + " and " + true_time.file.name + " show the same moment.";
    return shift;
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
