#pragma once

#include "ui/painter/head_drawing.h"
#include "ui/theme/theme.h"

namespace quarterturn {

// A drawing in the window's colours, on a card.
inline DrawingColours drawing_colours(const QPalette& palette) {
    return {.outline = outline_colour(palette),
            .line = ink_colour(palette),
            .parting = accent_colour(palette),
            .tint = wash_colour(palette),
            .paper = card_colour(palette),
            .in_marks = ink_colour(palette)};
}

}  // namespace quarterturn
