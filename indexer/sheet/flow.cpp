#include "indexer/sheet/flow.h"

namespace quarterturn {
namespace {

constexpr double again_gap = 2;      // mm above and below the rule under the line of a further page
constexpr double foot_gap = 0.8;     // mm between the rule and the foot lines
constexpr double page_share = 0.16;  // of the page's width, for its number
constexpr double page_mm = 2.2;      // and at the least, for each point of its type

}  // namespace

TextItem text_item(std::string text, double points, bool bold, Tone tone) {
    TextItem item;
    item.text = std::move(text);
    item.points = points;
    item.bold = bold;
    item.tone = tone;
    return item;
}

SheetFlow::SheetFlow(const SheetContent& content, const SheetStyle& style, TextRuler& ruler)
    : content_(content), style_(style), ruler_(ruler), y_(style.margin) {
    document_.title = content.title;
    document_.pages.push_back({style.paper, {}});
}

double SheetFlow::room_on_new_page() const {
    return style_.bottom() - style_.margin - line_height(style_.caption_points) - 2 * again_gap;
}

void SheetFlow::new_page() {
    document_.pages.push_back({style_.paper, {}});
    const TextItem line =
        text_item(content_.header.again, style_.caption_points, false, Tone::soft);
    const double height = line_height(line.points);
    put_text(line, style_.left(), style_.margin, style_.width(), height);
    y_ = style_.margin + height + again_gap;
    put(RuleItem{style_.left(), y_, style_.left() + style_.width(), y_});
    y_ += again_gap;
    fresh_ = true;
}

void SheetFlow::put(PageItem item) {
    document_.pages.back().items.push_back(std::move(item));
    fresh_ = false;
}

double SheetFlow::line_height(double points) const {
    return ruler_.height_mm("X", points, false, style_.width());
}

double SheetFlow::height_of(const TextItem& text, double width) {
    return ruler_.height_mm(text.text, text.points, text.bold, width);
}

double SheetFlow::put_text(TextItem text, double x, double y, double width, double most) {
    const double height = std::min(height_of(text, width), most);
    text.box = {x, y, width, height};
    put(std::move(text));
    return height;
}

void SheetFlow::put_foot(Page& page, std::size_t number) {
    const double rule = style_.paper.height - style_.margin - style_.footer;
    page.items.push_back(RuleItem{style_.left(), rule, style_.left() + style_.width(), rule});
    const double line = line_height(style_.footer_points);
    const double side = std::max(style_.width() * page_share, style_.footer_points * page_mm);
    double y = rule + foot_gap;
    const auto put_part = [&](std::string text, Align align, double x, double width) {
        TextItem item = text_item(std::move(text), style_.footer_points, false, Tone::soft);
        item.align = align;
        item.box = {x, y, width, line};
        page.items.push_back(std::move(item));
    };
    put_part("Page " + std::to_string(number) + " of " + std::to_string(document_.pages.size()),
             Align::right, style_.left() + style_.width() - side, side);
    for (const std::string& text : {content_.business_line, content_.private_line}) {
        if (text.empty()) continue;
        put_part(text, Align::left, style_.left(), style_.width() - side);
        y += line;
    }
}

Document SheetFlow::finish() {
    for (std::size_t i = 0; i < document_.pages.size(); ++i) {
        put_foot(document_.pages[i], i + 1);
    }
    return std::move(document_);
}

}  // namespace quarterturn
