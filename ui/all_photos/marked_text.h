#pragma once

#include <QPalette>
#include <QRect>
#include <QString>
#include <vector>

#include "indexer/store/photo_search.h"

class QPainter;

namespace quarterturn {

// Text with what was looked for in bold on a wash of accent, underlined: `before`, then the pieces.
// Breaks into as many lines as the area has room for; what does not fit is left out.
void draw_marked(QPainter& painter, const QRect& area, const QString& before,
                 const std::vector<TextPiece>& pieces, const QPalette& palette);

QString shown(WordsOf where);  // "recipe"

}  // namespace quarterturn
