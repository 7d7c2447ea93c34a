#pragma once
// What a picture of a pair shows of both photos: both heads whole, at one scale.

#include <array>

#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

struct HeadsWindow {
    Box window;  // in heights of the first picture
    // How much of the window each photo leaves empty, 0 … 1.
    std::array<double, 2> empty{};

    double most_empty() const;
};

// The window of window_of() where it holds both heads from the hair's top to chin or nape with some
// air, and both photos fill it; else one that is drawn closer or moved until they do. Where there
// is none, the smallest that holds both heads, where the photos leave the least of it empty: heads
// go before the border of a photo.
HeadsWindow window_of_both_heads(const LaidPair& pair, double cell_aspect);

}  // namespace quarterturn
