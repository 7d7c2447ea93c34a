#include "indexer/image/profile.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

// ICC.1:2022, 7.2.1: bytes 24 to 35 of a profile's header say when it was made, as year, month,
// day, hour, minute and second of two bytes each, the higher first.
std::vector<int> when_made(const std::vector<std::byte>& icc) {
    std::vector<int> numbers;
    for (std::size_t at = 24; at < 36; at += 2) {
        numbers.push_back(std::to_integer<int>(icc.at(at)) * 256 +
                          std::to_integer<int>(icc.at(at + 1)));
    }
    return numbers;
}

// What is exported carries it.
TEST(Profile, DoesNotTellWhenAPictureWasExported) {
    const std::vector<int> beginning_of_1999{1999, 1, 1, 0, 0, 0};
    EXPECT_EQ(when_made(srgb_profile()), beginning_of_1999);
    const auto wide =
        make_profile({0.3127, 0.3290}, {0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060});
    EXPECT_EQ(when_made(wide), beginning_of_1999);
}

}  // namespace
}  // namespace quarterturn
