#pragma once
// One typeface in a few sizes. Sizes follow the text size she chose; spaces follow the text.

#include <QFont>

class QWidget;

namespace quarterturn {

enum class TextSize { normal, large, largest };
enum class TextRole { title, heading, body, small };

// Points: body text stands at 11, 13 or 15.5 by the text size.
QFont text_font(TextRole role, TextSize size);

// The same roles told from the application's body font, for widgets that are being built.
QFont text_font(TextRole role);

// Space in device-independent pixels that grows with the text: 1 is a breath (4 px at normal size),
// 2 between a label and what it names, 4 between groups, 8 round a page.
int space(int steps);

}  // namespace quarterturn
