#pragma once
// How one picture of a laid pair is painted, wherever it stands.

#include <QRectF>

#include "indexer/image/similarity.h"
#include "indexer/sheet/page.h"

class QImage;
class QPainter;
class QPalette;

namespace quarterturn {

inline constexpr double head_aspect = 0.8;  // of a cell for one head with its hair, upright

// The largest box of these proportions (width over height) in the middle of `room`.
QRectF in_the_middle(const QRectF& room, double aspect = head_aspect);

// `window` of the first picture fills `cell`; `lay` lays this picture upon the first. Both in
// heights of their pictures, the right way round. The cell's corners are round.
void draw_laid(QPainter& painter, const QRectF& cell, const QImage& picture, bool mirrored,
               const Similarity& lay, const Box& window, const QPalette& palette);

// All of it, as large as the cell allows.
void draw_whole(QPainter& painter, const QRectF& cell, const QImage& picture, bool mirrored,
                const QPalette& palette);

}  // namespace quarterturn
