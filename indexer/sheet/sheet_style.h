#pragma once
// Measures of a sheet in millimetres, and type in points. They grow and shrink with the paper, but
// no type falls below six points: smaller is not read at a kitchen table (common practice).

#include "indexer/sheet/page.h"

namespace quarterturn {

struct SheetStyle {
    Size paper;
    double margin = 0;
    double gutter = 0;      // between columns
    double space = 0;       // between bands
    double footer = 0;      // height of the foot lines
    double above_foot = 0;  // left free between what stands on the page and the rule of the foot
    double ring = 0;        // side of the coverage ring
    int columns = 4;        // of photos by angle
    int frame_columns = 6;  // of photos that are only looked through
    int text_columns = 3;   // of the recipe
    double name_points = 0;
    double lead_points = 0;     // header lines
    double heading_points = 0;  // bands
    double body_points = 0;     // recipe
    double caption_points = 0;
    double frame_points = 0;  // captions where the columns are narrow
    double footer_points = 0;

    double left() const { return margin; }
    double width() const { return paper.width - 2 * margin; }
    double bottom() const { return paper.height - margin - footer - above_foot; }
    double column_width(int count) const { return (width() - (count - 1) * gutter) / count; }
};

// The paper stands upright: the four columns, the rows and the recipe of one look fit on one page.
SheetStyle sheet_style(Paper paper);

}  // namespace quarterturn
