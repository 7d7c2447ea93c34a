#pragma once
// The wedding board on paper, to hang by the mirror: a front with the photos of a look and a page
// with how it is made, look by look, in the order of work. Everything is told by words, marks and
// lines, so that a printer without colour will do.

#include "indexer/image/decode.h"
#include "indexer/looks/wedding_board.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// Photos lie as on the head plan: front at the top, back at the bottom, the client's left at the
// left; between them the three-quarters, the crown in the middle. Type shrinks, to three quarters
// at the least, where that brings a recipe onto one page.
Document board_sheet(const WeddingBoard& board, Library& library, Decoder& decoder,
                     TextRuler& ruler, Paper paper);

}  // namespace quarterturn
