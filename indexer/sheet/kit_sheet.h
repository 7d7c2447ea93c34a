#pragma once
// The kit list on paper, with a box to tick by hand beside every line.

#include "indexer/looks/kit_list.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// Throws StoreError when there is no such wedding.
Document kit_sheet(Library& library, TextRuler& ruler, WeddingId wedding, Paper paper);

// From what stands in the list alone; `business_line` at the foot.
Document kit_sheet(const KitList& list, const std::string& business_line, TextRuler& ruler,
                   Paper paper);

}  // namespace quarterturn
