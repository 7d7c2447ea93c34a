#include "indexer/sheet/kit_sheet.h"

#include "indexer/sheet/header.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double line_gap = 1.3;     // mm above and below what stands in a line
constexpr double tick_share = 1.15;  // of a line's height, for the side of its box
constexpr double larger_words = 1.15;

SheetContent content_of(const KitList& list, const std::string& business_line) {
    SheetContent content;
    const Wedding& wedding = list.kit.wedding;
    content.title = "Kit list, " + wedding.name;
    content.header.client = wedding.name;
    content.header.lines = wedding_words(wedding);
    content.header.lines.front() = "Kit list";
    content.header.state = packed_text(list);
    if (!list.kit.pins.empty()) {
        content.header.lines.push_back("Pins with " + std::to_string(list.kit.spare_percent) +
                                       " % to spare");
    }
    content.header.again = "Kit list · " + wedding.name;
    content.business_line = business_line;
    content.private_line.clear();
    return content;
}

class KitPages {
  public:
    explicit KitPages(SheetFlow& flow)
        : flow_(flow),
          side_(flow.line_height(flow.style().body_points) * tick_share),
          indent_(side_ + flow.style().gutter) {}

    void put_group(const KitList& list, KitGroup group) {
        std::string title(heading(group));
        for (const KitLine& line : list.lines) {
            if (line.group != group) continue;
            const bool begins = title == heading(group);
            if (begins) put_section(flow_, title);
            if (!begins && flow_.room() < height_of(line)) {
                flow_.new_page();
                put_section(flow_, title);
            }
            title = std::string(heading(group)) + ", continued";
            put_line(line);
        }
    }

  private:
    std::vector<TextItem> texts_of(const KitLine& line) const {
        const SheetStyle& style = flow_.style();
        std::vector<TextItem> texts{text_item(counted_text(line), style.body_points, true)};
        const std::string grown = grown_text(line);
        if (!grown.empty()) {
            texts.push_back(text_item(grown, style.caption_points, true, Tone::accent));
        }
        const std::string below = about_text(line);
        if (!below.empty()) {
            texts.push_back(text_item(below, style.caption_points, false, Tone::soft));
        }
        for (TextItem& text : texts) text.align = Align::start;
        return texts;
    }

    double width() const { return flow_.style().width() - indent_; }

    double height_of(const KitLine& line) const {
        double height = 0;
        for (const TextItem& text : texts_of(line)) height += flow_.height_of(text, width());
        return std::max(height, side_) + 2 * line_gap;
    }

    void put_line(const KitLine& line) {
        const SheetStyle& style = flow_.style();
        const double height = height_of(line);
        if (flow_.room() < height && !flow_.page_is_fresh()) flow_.new_page();
        const double top = flow_.y() + line_gap;
        flow_.put(TickItem{{style.left(), top, side_, side_}, line.ticked.has_value()});
        double y = top;
        for (const TextItem& text : texts_of(line)) {
            y += flow_.put_text(text, style.left() + indent_, y, width(), style.bottom() - y);
        }
        flow_.down(height);
        flow_.put(
            RuleItem{style.left() + indent_, flow_.y(), style.left() + style.width(), flow_.y()});
    }

    SheetFlow& flow_;
    double side_;
    double indent_;
};

// Read while packing, at arm's length.
SheetStyle kit_style(Paper paper) {
    SheetStyle style = sheet_style(paper);
    style.caption_points = style.lead_points * 0.9;
    style.body_points = style.lead_points * larger_words;
    style.heading_points = style.body_points;
    return style;
}

}  // namespace

Document kit_sheet(Library& library, TextRuler& ruler, WeddingId wedding, Paper paper) {
    return kit_sheet(kit_list(library, wedding), business_words(library.settings()), ruler, paper);
}

Document kit_sheet(const KitList& list, const std::string& business_line, TextRuler& ruler,
                   Paper paper) {
    const SheetContent content = content_of(list, business_line);
    SheetFlow flow(content, kit_style(paper), ruler);
    put_header(flow, content.header);
    KitPages pages(flow);
    for (const KitGroup group : all_kit_groups) pages.put_group(list, group);
    flow.down(flow.style().space);
    for (const std::string& note : kit_notes(list)) {
        put_paragraph(flow, text_item(note, flow.style().caption_points));
    }
    return flow.finish();
}

}  // namespace quarterturn
