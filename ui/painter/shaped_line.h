#pragma once
// Scripts such as Arabic and Devanagari change a letter's shape by its neighbours. In a PDF the
// shapes alone would be copied and searched as other characters than were written, or as none. So a
// line in such a script is drawn as outlines, over the letters it was written with in the colour of
// the paper, word by word in the same places: readers and search find what was typed.

#include <QPainter>
#include <QTextLine>

namespace quarterturn {

// Whether any of the words are in such a script.
bool needs_shaping(const QString& words);

// Draws the line of `text` with the painter's pen, its layout's top left at `at`.
void draw_shaped_line(QPainter& painter, const QString& text, const QTextLine& line,
                      const QPointF& at);

}  // namespace quarterturn
