#include "indexer/sheet/header.h"

namespace quarterturn {
namespace {

constexpr double state_share = 0.4;  // of the page's width, for the ring and the state
constexpr double smaller_name = 0.7;
constexpr double most_share = 0.25;  // of the page's height, however long the names are

// Texts one below the other; answers where they end. What would pass `bottom` is cut.
double put_texts(SheetFlow& flow, const std::vector<TextItem>& texts, double x, double y,
                 double width, double bottom) {
    for (const TextItem& text : texts) {
        if (text.text.empty() || y + flow.line_height(text.points) > bottom) continue;
        y += flow.put_text(text, x, y, width, bottom - y);
    }
    return y;
}

// A name of more than two lines is set smaller.
TextItem name_text(SheetFlow& flow, const std::string& name, double width) {
    TextItem text = text_item(name, flow.style().name_points);
    if (flow.height_of(text, width) > 2.5 * flow.line_height(text.points)) {
        text.points *= smaller_name;
    }
    return text;
}

std::vector<TextItem> names(SheetFlow& flow, const SheetHeader& header, double width) {
    const SheetStyle& style = flow.style();
    std::vector<TextItem> texts{name_text(flow, header.client, width)};
    for (const std::string& line : header.lines) {
        texts.push_back(text_item(line, style.lead_points, false, Tone::soft));
    }
    return texts;
}

std::vector<TextItem> states(const SheetHeader& header, const SheetStyle& style) {
    return {text_item(header.state, style.lead_points, true),
            text_item(header.sentence, style.body_points, false, Tone::soft)};
}

double put_ring_and_states(SheetFlow& flow, const SheetHeader& header, double bottom) {
    const SheetStyle& style = flow.style();
    const double width = style.width() * state_share;
    const double x = style.left() + style.width() - width;
    flow.put(RingItem{{x, flow.y(), style.ring, style.ring}, *header.ring});
    const double text_x = x + style.ring + style.gutter;
    const double text_end = put_texts(flow, states(header, style), text_x, flow.y(),
                                      style.left() + style.width() - text_x, bottom);
    return std::max(flow.y() + style.ring, text_end);
}

}  // namespace

void put_header(SheetFlow& flow, const SheetHeader& header) {
    const SheetStyle& style = flow.style();
    const double bottom = flow.y() + style.paper.height * most_share;
    const double right = header.ring ? put_ring_and_states(flow, header, bottom) : flow.y();
    const double width =
        header.ring ? style.width() * (1 - state_share) - style.gutter : style.width();
    std::vector<TextItem> left = names(flow, header, width);
    if (!header.ring) std::ranges::move(states(header, style), std::back_inserter(left));
    const double end =
        std::max(right, put_texts(flow, left, style.left(), flow.y(), width, bottom));
    flow.down(end - flow.y() + style.space);
}

}  // namespace quarterturn
