#pragma once

// Every photo of the demo: who, when, from where, and what went wrong.

#include "demo_photos/picture/develop.h"
#include "demo_photos/story/sitters.h"

#include <vector>

namespace quarterturn::demo {

enum class Device { phone, camera };

struct Shot {
    Device device = Device::phone;
    std::string day;      ///< "2026-11-07"
    int millisecond = 0;  ///< true time since midnight
    Who who = Who::a;
    Style style = Style::brushed_out;
    std::string sitting;  ///< key of the scenario, empty for none
    std::string look;     ///< key of the scenario, empty for none
    std::string stage;
    std::string angle;
    View view;
    Lighting light;
    Develop develop;
    bool mirrored = false;
    std::string burst;
    int orientation = 1;
    bool heic = false;
    bool turned_in_file = false;  ///< HEIC: rotation is the file's own
    bool at_sea = false;          ///< carries a position
    std::string keyword;
    std::string name_end;  ///< added to the file name by hand
    bool still_life = false;
    std::string file;  ///< "phone/20261107_100412.jpg"
};

/// In the order of taking. The same list every time.
std::vector<Shot> all_shots();

}  // namespace quarterturn::demo
