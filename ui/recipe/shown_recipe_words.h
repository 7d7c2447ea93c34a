#pragma once
// The fixed words of a recipe as they stand on screen.

#include <QString>

#include "indexer/record/recipe/words.h"

namespace quarterturn {

QString shown(Wind wind);
QString shown(PartingSide side);
QString shown(PieceKind kind);
QString shown(Hold hold);
QString shown(SeenIn seen);

}  // namespace quarterturn
