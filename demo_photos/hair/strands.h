#pragma once

// Hair as many thin lines. A strand is a run of points from root to tip.

#include "demo_photos/shape/vec3.h"

#include <cstdint>
#include <vector>

namespace quarterturn::demo {

/// Linear light, how much of each colour a strand gives back.
struct StrandLook {
    Vec3 root_colour;
    Vec3 tip_colour;
    float width = 0.009F;  ///< cm
    float shine = 1.0F;
    bool stray = false;  ///< drawn last and see-through
};

struct StrandSet {
    std::vector<Vec3> points;
    std::vector<std::uint32_t> starts{0};  ///< strand i runs from starts[i] to starts[i + 1]
    std::vector<StrandLook> looks;
    std::vector<Vec3> outwards;  ///< away from the head, a point each; filled when all is grown

    std::size_t count() const { return looks.size(); }
    void add(const std::vector<Vec3>& run, const StrandLook& look) {
        if (run.size() < 2) {
            return;
        }
        points.insert(points.end(), run.begin(), run.end());
        starts.push_back(static_cast<std::uint32_t>(points.size()));
        looks.push_back(look);
    }
    void append(const StrandSet& other) {
        for (std::size_t i = 0; i < other.count(); ++i) {
            add({other.points.begin() + other.starts[i],
                 other.points.begin() + other.starts[i + 1]},
                other.looks[i]);
        }
    }
};

}  // namespace quarterturn::demo
