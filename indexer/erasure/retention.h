#pragma once
// How long looks are kept.

#include <optional>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct PastKeeping {
    Client client;
    Date last{};  // of her sittings, weddings and photos
    std::size_t looks = 0;
    std::size_t photos = 0;
};

// Clients of whom nothing is newer than the years that looks are kept (the setting "keep looks
// years"), the longest gone first: proposed for erasure, and nothing is erased. None while nothing
// is set, and none of whom no day is known.
std::vector<PastKeeping> past_keeping(Library& library, Date today);

}  // namespace quarterturn
