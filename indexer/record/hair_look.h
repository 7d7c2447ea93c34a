#pragma once
// What the hair in a picture looks like, as numbers to be compared with those of another picture.

#include <cstdint>
#include <vector>

namespace quarterturn {

// Shares from 0 to 1 in steps of 1/255; empty where no head was found. See image/hair_look.h.
struct HairLook {
    using Shares = std::vector<std::uint8_t>;

    Shares colour;   // red to green, blue to green, and how light, each a histogram
    Shares texture;  // which way edges run, cell by cell
    Shares shape;    // the outline of head and hair

    bool told() const { return !shape.empty(); }
    bool operator==(const HairLook&) const = default;
};

}  // namespace quarterturn
