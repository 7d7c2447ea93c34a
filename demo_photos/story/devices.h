#pragma once

#include "demo_photos/device/photo_file.h"
#include "demo_photos/story/shots.h"

namespace quarterturn::demo {

std::string device_name(Device device);

/// Hours ahead of UTC on that day, as the phone writes it; empty for the camera.
std::string offset_on(Device device, const std::string& day);

/// The device's own clock when the shot was taken, milliseconds since midnight.
int file_millisecond(const Shot& shot);

PhotoFacts facts_of(const Shot& shot);

}  // namespace quarterturn::demo
