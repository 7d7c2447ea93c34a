#pragma once
// Fills page after page from the top, with a line that says whose sheet it is at the head of every
// further page and the foot lines below.

#include "indexer/sheet/sheet_content.h"
#include "indexer/sheet/sheet_style.h"

namespace quarterturn {

// A text of the full width that starts at (0, 0) and has no height yet.
TextItem text_item(std::string text, double points, bool bold = false, Tone tone = Tone::ink);

class SheetFlow {
  public:
    SheetFlow(const SheetContent& content, const SheetStyle& style, TextRuler& ruler);

    const SheetStyle& style() const { return style_; }
    // From here on; paper, margins and foot must be those of the style before.
    void set_style(const SheetStyle& style) { style_ = style; }
    TextRuler& ruler() { return ruler_; }
    double y() const { return y_; }
    double room() const { return style_.bottom() - y_; }
    double room_on_new_page() const;
    bool page_is_fresh() const { return fresh_; }  // nothing but the header's line stands on it

    void new_page();
    void down(double mm) { y_ += mm; }
    void put(PageItem item);

    double line_height(double points) const;
    double height_of(const TextItem& text, double width);
    // Puts the text's top left at (x, y), wrapped to the width and no higher than `most`; answers
    // its height.
    double put_text(TextItem text, double x, double y, double width, double most);

    // The pages with their foot; ends the flow.
    Document finish();

  private:
    void put_foot(Page& page, std::size_t number);

    const SheetContent& content_;
    SheetStyle style_;
    TextRuler& ruler_;
    Document document_;
    double y_ = 0;
    bool fresh_ = true;
};

}  // namespace quarterturn
