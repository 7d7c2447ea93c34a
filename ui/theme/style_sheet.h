#pragma once

#include <QPalette>
#include <QString>

namespace quarterturn {

// The look of the usual controls. A QPushButton whose property "kind" is "next" is the one thing to
// do next and is filled with the accent; "quiet" has no frame until it is looked at. A QFrame of
// kind "card" is a sheet of paper on the page. A QLabel of kind "quiet" is second-rank text.
QString style_sheet(const QPalette& palette);

}  // namespace quarterturn
