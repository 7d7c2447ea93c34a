#include "demo_photos/device/clock.h"

#include <cstdio>

namespace quarterturn::demo {

int parse_time_of_day(const std::string& text) {
    return ((std::stoi(text.substr(0, 2)) * 60 + std::stoi(text.substr(3, 2))) * 60 +
            std::stoi(text.substr(6, 2))) *
               1000 +
           std::stoi(text.substr(9, 3));
}

std::string time_of_day(int millisecond) {
    char text[32];
    std::snprintf(text, sizeof text, "%02d:%02d:%02d.%03d", millisecond / 3600000,
                  millisecond / 60000 % 60, millisecond / 1000 % 60, millisecond % 1000);
    return text;
}

}  // namespace quarterturn::demo
