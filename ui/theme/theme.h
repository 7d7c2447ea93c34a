#pragma once
// Puts palette, typeface and style on the whole application. May be called again at any time: what
// is on screen follows.

#include "ui/theme/palette.h"
#include "ui/theme/type.h"

class QApplication;
class QColor;
class QPainter;
class QRect;
class QWidget;

namespace quarterturn {

struct Theme {
    Mood mood = Mood::paper;
    TextSize text_size = TextSize::normal;

    bool operator==(const Theme&) const = default;
};

void apply_theme(QApplication& application, const Theme& theme);

// Kept in the user's own settings, not in a library.
Theme remembered_theme();
void remember_theme(const Theme& theme);

// The ring round what has the keyboard's attention, just inside `area`: two pixels of accent.
void draw_focus_ring(QPainter& painter, const QRect& area, const QPalette& palette);

// The small open arrow of what opens, in the middle of `area`.
void draw_chevron(QPainter& painter, const QRect& area, const QColor& colour, bool up = false);

// The smallest side of anything that can be clicked, px (WCAG 2.2, 2.5.8), and on the wedding
// morning (2.5.5).
inline constexpr int least_target = 24;
inline constexpr int morning_target = 44;

}  // namespace quarterturn
