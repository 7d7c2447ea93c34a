#pragma once
// Headings and paragraphs one below the other, over as many pages as they take.

#include "indexer/sheet/flow.h"

namespace quarterturn {

// Stays with a little of what follows it.
void put_section(SheetFlow& flow, const std::string& heading);

// Over the full width but for an indent, mm; broken between words where the page ends.
void put_paragraph(SheetFlow& flow, TextItem text, double indent = 0);

}  // namespace quarterturn
