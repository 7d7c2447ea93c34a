#pragma once
// What must hold for every screen. Each check walks the visible widgets below `root` and answers
// one sentence for each thing that is wrong, so that a test reads
//     EXPECT_EQ(problems_with(screen), QStringList());
//
// Published measures: WCAG 2.2 (W3C Recommendation, 2023). 1.4.3 contrast of text 4.5 : 1, of large
// text 3 : 1 (18 pt, or 14 pt bold); 2.5.8 targets of 24 × 24 CSS px; 2.1.1 keyboard; 4.1.2 name.

#include <QStringList>
#include <QWidget>

#include "tests/ui/support/print.h"

namespace quarterturn {

// Shows a window and waits until it has the keyboard and is laid out.
void show_active(QWidget& root);

// Every control has a name for a screen reader, asked through Qt's accessibility interface.
QStringList controls_without_name(const QWidget& root);

// Every control that takes the keyboard is reached by pressing Tab. `root` must be a window, shown.
QStringList out_of_reach_of_tab(QWidget& root);

// Text against what is painted behind it, measured on the pixels of a picture of `root`.
QStringList text_without_contrast(QWidget& root);

QStringList targets_too_small(const QWidget& root, int least = 24);

// Text that has less room than it needs, or lies outside the part it belongs to.
QStringList clipped_text(const QWidget& root);

// Pages that scroll down only, but are wider than what is seen of them.
QStringList wider_than_their_pages(const QWidget& root);

// All of the above. Shows the window when it is not shown.
QStringList problems_with(QWidget& root);

// The same at each of the sizes a screen must bear, which are device-independent pixels: a laptop's
// 1280 × 800, a large screen's 1920 × 1080, and the 960 × 540 that 200 % leaves of 1920 × 1080.
QStringList problems_at_all_sizes(QWidget& root);

}  // namespace quarterturn
