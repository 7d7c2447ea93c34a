#pragma once

#include <QScrollArea>
#include <QVBoxLayout>

namespace quarterturn {

// A page that scrolls down when it is long. Its column is no wider than one reads easily and stands
// in the middle of a wide window.
struct ScrollingPage {
    QScrollArea* scroll;
    QVBoxLayout* column;
};
ScrollingPage make_scrolling_page();

// Margins whose first stands where reading begins, as the window reads when this is called.
void set_reading_margins(QLayout& layout, int leading, int top, int trailing, int bottom);

// The page that the widget lies on; null when it lies on none.
QScrollArea* page_around(const QWidget& widget);

// Page Up, Page Down, Home and End, for the largest page of `part` that scrolls. False when the key
// is another one, or no page scrolls.
bool scroll_by_key(const QWidget& part, int key);

// All of it has its size and place, and the page its length.
void lay_out_now(QScrollArea& page);

// Beside the main part of a screen: scrolls down where the window is low.
QScrollArea* make_scrolling_side(QWidget* content);

}  // namespace quarterturn
