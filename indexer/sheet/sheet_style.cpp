#include "indexer/sheet/sheet_style.h"

namespace quarterturn {
namespace {

constexpr double a4_width = 210;
constexpr double least_points = 6;

// A line of type with its leading, for the tallest of usual faces.
double mm_for_line(double points) {
    return points * 1.5 * 25.4 / 72;
}

int text_columns(Paper paper) {
    return paper == Paper::a5 ? 2 : 3;
}

int frame_columns(Paper paper) {
    switch (paper) {
        case Paper::a3:
            return 8;
        case Paper::a5:
            return 4;
        case Paper::a4:
        case Paper::letter:
            return 6;
    }
    return 6;
}

}  // namespace

SheetStyle sheet_style(Paper paper) {
    SheetStyle style;
    style.paper = paper_size(paper, false);
    const double scale = style.paper.width / a4_width;
    const auto points = [&](double on_a4) { return std::max(least_points, on_a4 * scale); };
    style.margin = 13 * scale;
    style.gutter = 3.6 * scale;
    style.space = 3.4 * scale;
    style.ring = 21 * scale;
    style.frame_columns = frame_columns(paper);
    style.text_columns = text_columns(paper);
    style.name_points = points(21);
    style.lead_points = points(9.5);
    style.heading_points = points(9.5);
    style.body_points = points(7.6);
    style.caption_points = points(7);
    style.frame_points = std::min(style.caption_points, 6.6);
    style.footer_points = points(6.2);
    style.footer = 2 * mm_for_line(style.footer_points) + 1;
    return style;
}

}  // namespace quarterturn
