#pragma once
// The colours of the window: paper, ink and one warm accent. Two moods: paper for the day, and a
// dim one for a hotel room early in the morning. They travel as a QPalette, so that every widget
// paints from its own palette() and a change of mood repaints by itself.
//
// Contrast (WCAG 2.2): text at least 4.5 : 1 (1.4.3), control outlines, marks and the focus ring at
// least 3 : 1 (1.4.11), against both the page and the cards on it. tests/ui/theme proves it.

#include <QColor>
#include <QPalette>

namespace quarterturn {

enum class Mood { paper, dawn };

QPalette make_palette(Mood mood);

// What each colour is for. All but `hairline` and `wash` may carry meaning.
QColor page_colour(const QPalette& palette);       // the window's ground
QColor card_colour(const QPalette& palette);       // sheets of paper lying on it
QColor ink_colour(const QPalette& palette);        // text
QColor quiet_colour(const QPalette& palette);      // second-rank text, still 4.5 : 1
QColor outline_colour(const QPalette& palette);    // edges of controls and empty shapes
QColor hairline_colour(const QPalette& palette);   // ornament between parts
QColor accent_colour(const QPalette& palette);     // what is done, what to do next, focus
QColor on_accent_colour(const QPalette& palette);  // text on the accent
QColor wash_colour(const QPalette& palette);       // a breath of accent behind ink

// Relative luminance 0 … 1 and contrast ratio 1 … 21 as WCAG 2.2 defines them.
double relative_luminance(const QColor& colour);
double contrast_ratio(const QColor& one, const QColor& other);

}  // namespace quarterturn
