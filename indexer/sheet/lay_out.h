#pragma once
// From what stands on a sheet to pages.

#include "indexer/sheet/sheet_content.h"
#include "indexer/sheet/sheet_style.h"

namespace quarterturn {

// The header, the bands, the recipe at the foot, then more frames, smaller. The photos of the bands
// are made a little smaller where that brings bands and recipe onto one page.
Document lay_out(const SheetContent& content, const SheetStyle& style, TextRuler& ruler);

// The photos of `more`, each with a box as large as it gets, before it is known where it stands.
std::vector<PhotoItem> frames_of(const SheetContent& content, const SheetStyle& style);

}  // namespace quarterturn
