#pragma once
// Texts of any script for RapidCheck: UTF-8 of any code points but zero.

#include <rapidcheck.h>

#include <string>

namespace quarterturn {

inline void append_utf8(std::string& text, std::uint32_t point) {
    const auto add = [&](std::uint32_t byte) { text += static_cast<char>(byte); };
    if (point < 0x80) {
        add(point);
    } else if (point < 0x800) {
        add(0xC0 | (point >> 6));
        add(0x80 | (point & 0x3F));
    } else if (point < 0x10000) {
        add(0xE0 | (point >> 12));
        add(0x80 | ((point >> 6) & 0x3F));
        add(0x80 | (point & 0x3F));
    } else {
        add(0xF0 | (point >> 18));
        add(0x80 | ((point >> 12) & 0x3F));
        add(0x80 | ((point >> 6) & 0x3F));
        add(0x80 | (point & 0x3F));
    }
}

inline rc::Gen<std::string> arbitrary_text() {
    const auto point = rc::gen::weightedOneOf<std::uint32_t>({
        {6, rc::gen::inRange<std::uint32_t>(1, 0x80)},
        {2, rc::gen::inRange<std::uint32_t>(0x80, 0xD800)},
        {1, rc::gen::inRange<std::uint32_t>(0xE000, 0x110000)},
    });
    return rc::gen::map(rc::gen::container<std::vector<std::uint32_t>>(point),
                        [](const std::vector<std::uint32_t>& points) {
                            std::string text;
                            for (const std::uint32_t each : points) append_utf8(text, each);
                            return text;
                        });
}

}  // namespace quarterturn
