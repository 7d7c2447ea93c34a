#pragma once
// Buttons of the board, made from the usual ones.

#include <QPushButton>

#include "ui/wedding_morning/board_type.h"

namespace quarterturn {

// Her own words for a button, which does not break them by itself: on as many lines as they need
// in so many pixels.
QString on_lines(const QString& words, const QFont& font, int width);

// As large as everything that is pressed on the board.
void suit_board(QPushButton& button, const BoardType& type, BoardRole role = BoardRole::small);

}  // namespace quarterturn
