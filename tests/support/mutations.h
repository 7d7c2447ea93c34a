#pragma once
// Files damaged in ways that cards, cables and hostile hands damage them; the same for each seed.

#include <cstddef>
#include <cstdint>
#include <random>
#include <span>
#include <vector>

namespace quarterturn {

// Cut short, a few bytes changed, a stretch zeroed, or a stretch doubled: one of these or two.
inline std::vector<std::byte> damaged(std::span<const std::byte> whole, std::uint32_t seed) {
    std::mt19937 random(seed);
    std::vector<std::byte> bytes(whole.begin(), whole.end());
    const auto below = [&](std::size_t limit) {
        return limit == 0 ? std::size_t{0} : std::size_t{random()} % limit;
    };
    const auto damage_once = [&] {
        const std::size_t at = below(bytes.size());
        const std::size_t length = below(std::min<std::size_t>(64, bytes.size() - at)) + 1;
        const auto first = bytes.begin() + static_cast<std::ptrdiff_t>(at);
        const auto last = first + static_cast<std::ptrdiff_t>(std::min(length, bytes.size() - at));
        switch (below(4)) {
            case 0:
                bytes.resize(at);
                break;
            case 1:
                for (std::size_t i = 0; i < 8; ++i) {
                    // Headers are short and say the most: half of the changes go there.
                    const std::size_t place =
                        below(i % 2 == 0 ? bytes.size() : std::min<std::size_t>(512, bytes.size()));
                    bytes[place] = static_cast<std::byte>(random());
                }
                break;
            case 2:
                std::fill(first, last, std::byte{0});
                break;
            default: {
                const std::vector<std::byte> stretch(first, last);
                bytes.insert(first, stretch.begin(), stretch.end());
            }
        }
    };
    damage_once();
    if (!bytes.empty() && below(2) == 0) damage_once();
    return bytes;
}

}  // namespace quarterturn
