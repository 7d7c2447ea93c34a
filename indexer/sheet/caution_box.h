#pragma once
// Cautions in an outlined box with an exclamation mark beside them: seen without colour, and
// sparing of ink.

#include "indexer/sheet/flow.h"

namespace quarterturn {

struct CautionBox {
    std::vector<std::string> lines;
    double points = 11;
    bool bold = true;
};

double height_of(SheetFlow& flow, const CautionBox& caution, double width);

// With its top left at (x, flow.y()); does not move the flow down. Answers its height.
double put_caution_box(SheetFlow& flow, const CautionBox& caution, double x, double width);

}  // namespace quarterturn
