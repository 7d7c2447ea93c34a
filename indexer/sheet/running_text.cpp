#include "indexer/sheet/running_text.h"

#include "indexer/sheet/columns.h"

namespace quarterturn {
namespace {

constexpr double below_section = 0.8;    // mm
constexpr double below_paragraph = 0.6;  // mm
constexpr int lines_with_section = 3;    // of body text that must find room below it

}  // namespace

void put_section(SheetFlow& flow, const std::string& heading) {
    const SheetStyle& style = flow.style();
    TextItem text = text_item(heading, style.heading_points, true, Tone::accent);
    text.align = Align::start;
    const double height = flow.height_of(text, style.width());
    const double wanted = style.space + height + below_section +
                          lines_with_section * flow.line_height(style.body_points);
    if (flow.room() < wanted && !flow.page_is_fresh()) flow.new_page();
    if (!flow.page_is_fresh()) flow.down(style.space);
    flow.put_text(text, style.left(), flow.y(), style.width(), flow.room());
    flow.down(height + below_section);
}

void put_paragraph(SheetFlow& flow, TextItem text, double indent) {
    const SheetStyle& style = flow.style();
    const double width = style.width() - indent;
    text.align = Align::start;
    while (!text.text.empty()) {
        if (flow.room() < flow.line_height(text.points) && !flow.page_is_fresh()) flow.new_page();
        auto [now, later] = split_text(flow.ruler(), text, width, flow.room());
        text.text = std::move(now);
        flow.down(flow.put_text(text, style.left() + indent, flow.y(), width, flow.room()));
        text.text = std::move(later);
    }
    flow.down(below_paragraph);
}

}  // namespace quarterturn
