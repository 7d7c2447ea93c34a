#include "indexer/sheet/sheet_style.h"

namespace quarterturn {
namespace {

constexpr double a4_width = 210;
constexpr double least_points = 6;

// A line of type with its leading, for the tallest of usual faces.
double mm_for_line(double points) {
    return points * 1.5 * 25.4 / 72;
}

SheetStyle style_for(Paper paper) {
    SheetStyle style;
    style.paper = paper_size(paper, false);
    const double scale = style.paper.width / a4_width;
    const auto points = [&](double on_a4) { return std::max(least_points, on_a4 * scale); };
    style.margin = 13 * scale;
    style.gutter = 3.6 * scale;
    style.space = 3.4 * scale;
    style.ring = 21 * scale;
    style.name_points = points(21);
    style.lead_points = points(9.5);
    style.heading_points = points(9.5);
    style.body_points = points(7.6);
    style.caption_points = points(7);
    style.footer_points = points(6.2);
    style.footer = 2 * mm_for_line(style.footer_points) + 1;
    return style;
}

}  // namespace

SheetStyle contact_style(Paper paper) {
    SheetStyle style = style_for(paper);
    style.text_columns = paper == Paper::a5 ? 2 : 3;
    return style;
}

SheetStyle sitting_style(Paper paper) {
    SheetStyle style = style_for(paper);
    style.columns = paper == Paper::a5 ? 4 : paper == Paper::a3 ? 8 : 6;
    style.caption_points = std::max(least_points, std::min(style.caption_points, 6.6));
    return style;
}

}  // namespace quarterturn
