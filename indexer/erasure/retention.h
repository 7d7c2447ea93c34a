#pragma once
// How long looks are kept.

#include <optional>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct PastKeeping {
    Client client;
    std::optional<Look> only;  // this look of hers alone is past
    Date last{};               // of sittings, weddings and photos
    std::size_t looks = 0;
    std::size_t photos = 0;
};

// Clients of whom nothing is newer than the years that looks are kept (the setting "keep looks
// years"), and of the others the looks of which nothing is; the longest gone first. They are
// proposed for erasure, and nothing is erased. None while nothing is set, and none of which no day
// is known.
std::vector<PastKeeping> past_keeping(Library& library, Date today);

}  // namespace quarterturn
