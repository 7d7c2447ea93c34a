#pragma once
// The take-down card: one page that somebody who does no hair can follow. Nothing hangs on colour.

#include "indexer/image/decode.h"
#include "indexer/looks/take_down.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

inline constexpr double least_card_points = 12;

// Always one page. Type and photos shrink until all finds room, type to least_card_points at the
// least; what is too long even then is cut, and a sentence says so.
Document take_down_card(const TakeDown& take_down, Library& library, Decoder& decoder,
                        TextRuler& ruler, Paper paper);

}  // namespace quarterturn
