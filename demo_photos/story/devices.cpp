#include "demo_photos/story/devices.h"

#include "demo_photos/device/clock.h"

#include <cstdio>

namespace quarterturn::demo {

std::string device_name(Device device) {
    return device == Device::phone ? "phone" : "camera";
}

std::string offset_on(Device device, const std::string& day) {
    if (device == Device::camera) {
        return "";
    }
    return day < "2026-10-25" ? "+02:00" : "+01:00";
}

int file_millisecond(const Shot& shot) {
    return shot.millisecond +
           (shot.device == Device::camera ? camera_clock_offset_seconds * 1000 : 0);
}

PhotoFacts facts_of(const Shot& shot) {
    PhotoFacts facts;
    const bool phone = shot.device == Device::phone;
    facts.make = phone ? "Larkwing" : "Quillmoor";
    facts.model = phone ? "Larkwing Pocket 4" : "QTC Field 2";
    facts.serial = phone ? "LW4-00731926" : "QF2-5518";
    facts.lens = phone ? "Pocket 4 main lens 5.4 mm f/1.8" : "Quillmoor 50 mm f/2";
    facts.focal_mm = phone ? 5.4 : 50.0;
    facts.focal_35mm = phone ? 26 : 50;
    facts.aperture = phone ? 1.8 : 4.0;
    facts.exposure_denominator = phone ? 100 : 160;
    facts.iso = phone ? 160 : 400;
    switch (shot.develop.flaw) {
        case Flaw::moved:
            facts.exposure_denominator = 10;
            break;
        case Flaw::too_dark:
            facts.exposure_denominator = 1000;
            break;
        case Flaw::blown_out:
            facts.exposure_denominator = 15;
            break;
        case Flaw::none:
        case Flaw::out_of_focus:
            break;
    }
    const int clock = file_millisecond(shot);
    facts.taken = shot.day + " " + time_of_day(clock).substr(0, 8);
    facts.taken[4] = ':';
    facts.taken[7] = ':';
    char digits[8];
    // The camera counts hundredths, the phone thousandths.
    std::snprintf(digits, sizeof digits, phone ? "%03d" : "%02d",
                  phone ? clock % 1000 : clock % 1000 / 10);
    facts.subseconds = digits;
    facts.offset = offset_on(shot.device, shot.day);
    facts.orientation = shot.orientation;
    if (shot.at_sea) {
        facts.place = Place{40.1, 5.92};
    }
    facts.keyword = shot.keyword;
    facts.display_p3 = shot.develop.colour == ColourSpace::display_p3;
    return facts;
}

}  // namespace quarterturn::demo
