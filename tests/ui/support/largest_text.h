#pragma once

#include <QApplication>

#include "ui/theme/theme.h"

namespace quarterturn {

// As long as it lives, before the screens are made.
struct LargestText {
    LargestText() { apply_theme(*qApp, {.text_size = TextSize::largest}); }
    ~LargestText() { apply_theme(*qApp, {}); }
};

}  // namespace quarterturn
