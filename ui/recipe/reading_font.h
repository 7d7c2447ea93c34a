#pragma once

#include "ui/theme/type.h"

namespace quarterturn {

// For what is read while her hands are in the hair.
inline QFont reading_font() {
    QFont font = text_font(TextRole::heading);
    font.setBold(false);
    return font;
}

}  // namespace quarterturn
