#pragma once
// The drawing on the head as a picture within an HTML page: partings are solid lines, sections
// dashed ones, in the colour of the text around.

#include <string>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

// An svg element of class "head", to be drawn without filling; its marks are told below it by whoever puts it there.
std::string head_svg(const HeadDrawing& drawing);

}  // namespace quarterturn
