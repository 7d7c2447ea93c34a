#include "indexer/sheet/consent_sheet.h"

#include "indexer/sheet/running_text.h"

namespace quarterturn {
namespace {

constexpr std::array form_answers{"Yes, with my face", "Yes, hair only", "No"};
// Where the answers begin, in shares of the width; before them stands the use.
constexpr std::array answer_starts{0.32, 0.6, 0.87};
constexpr double row_lines = 1.55;   // height of a row, in lines
constexpr double box_share = 0.95;   // of a line, for the side of a box
constexpr double form_padding = 2;   // mm inside a frame
constexpr double room_to_sign = 12;  // mm above the line
constexpr double form_heading_scale = 1.12;
// On A4; the largest that leaves it on one page, else the smallest.
constexpr std::array form_points{12.0, 11.5, 11.0, 10.5, least_form_points};

SheetStyle form_style(Paper paper, double points) {
    SheetStyle style = sheet_style(paper);
    style.body_points = points;
    style.heading_points = points * form_heading_scale;
    style.footer_points = std::max(style.footer_points, 8.0);
    style.footer = 2 * style.footer_points * 1.5 * 25.4 / 72 + 1;
    return style;
}

class FormPage {
  public:
    explicit FormPage(SheetFlow& flow)
        : flow_(flow), style_(flow.style()), line_(flow.line_height(style_.body_points)) {}

    void put(const FormBlock& block) {
        switch (block.part) {
            case FormPart::heading:
                return put_section(flow_, block.words);
            case FormPart::paragraph:
                return put_paragraph(flow_, text_item(block.words, style_.body_points));
            case FormPart::framed:
                return put_framed(block.words);
            case FormPart::uses:
                return put_uses();
            case FormPart::until:
                return put_until();
            case FormPart::sign:
                return put_sign();
        }
    }

  private:
    void make_room(double height) {
        if (flow_.room() < height && !flow_.page_is_fresh()) flow_.new_page();
    }

    double answer_x(std::size_t answer) const {
        return style_.left() + answer_starts[answer] * style_.width();
    }

    double answer_end(std::size_t answer) const {
        const bool last = answer + 1 == answer_starts.size();
        return last ? style_.left() + style_.width() : answer_x(answer + 1);
    }

    void put_tick(double x, double top, double height) {
        const double side = line_ * box_share;
        flow_.put(TickItem{{x, top + (height - side) / 2, side, side}, false});
    }

    void put_words(const std::string& words, double x, double top, double width, double height) {
        const TextItem text = text_item(words, style_.body_points);
        const double needed = flow_.height_of(text, width);
        flow_.put_text(text, x, top + std::max(0.0, (height - needed) / 2), width, height);
    }

    double width_of_use() const { return answer_x(0) - style_.left() - style_.gutter; }

    // On small paper a use takes two lines.
    double height_of_row() const {
        double height = row_lines * line_;
        for (const Use use : all_uses) {
            const TextItem text = text_item(std::string(use_on_form(use)), style_.body_points);
            height = std::max(height, flow_.height_of(text, width_of_use()) + 0.2 * line_);
        }
        return height;
    }

    // A box for each use and answer, so that each is a choice of its own.
    void put_uses() {
        const double height = height_of_row();
        make_room((all_uses.size() + 1) * height);
        const double after_box = line_ * 1.3;
        for (const Use use : all_uses) {
            const double top = flow_.y();
            put_words(std::string(use_on_form(use)), style_.left(), top, width_of_use(), height);
            for (std::size_t i = 0; i < form_answers.size(); ++i) {
                put_tick(answer_x(i), top, height);
                put_words(form_answers[i], answer_x(i) + after_box, top,
                          answer_end(i) - answer_x(i) - after_box, height);
            }
            flow_.down(height);
            flow_.put(
                RuleItem{style_.left(), flow_.y(), style_.left() + style_.width(), flow_.y()});
        }
        flow_.down(style_.space / 2);
    }

    void put_until() {
        const double height = row_lines * line_;
        make_room(height);
        const double top = flow_.y();
        const double half = style_.width() / 2;
        put_tick(style_.left(), top, height);
        put_words("Until I take it back", style_.left() + 1.3 * line_, top, half, height);
        put_tick(style_.left() + half, top, height);
        put_words("Until this day: ____________________", style_.left() + half + 1.3 * line_, top,
                  half - 1.3 * line_, height);
        flow_.down(height);
    }

    void put_sign() {
        make_room(room_to_sign + 2 * line_);
        flow_.down(room_to_sign);
        const std::array places{"Place and day", "Signature"};
        const double width = (style_.width() - 2 * style_.gutter) / places.size();
        double x = style_.left();
        for (const char* place : places) {
            flow_.put(RuleItem{x, flow_.y(), x + width, flow_.y()});
            put_words(place, x, flow_.y() + 0.8, width, line_);
            x += width + 2 * style_.gutter;
        }
        flow_.down(1.3 * line_ + style_.space);
    }

    void put_framed(const std::string& words) {
        const TextItem text = text_item(words, style_.body_points, true);
        const double inside = style_.width() - 2 * form_padding;
        const double height = flow_.height_of(text, inside);
        make_room(height + 2 * form_padding);
        flow_.put(BarItem{{style_.left(), flow_.y(), style_.width(), height + 2 * form_padding},
                          BarFill::plain});
        flow_.put_text(text, style_.left() + form_padding, flow_.y() + form_padding, inside,
                       height);
        flow_.down(height + 2 * form_padding + style_.space);
    }

    SheetFlow& flow_;
    const SheetStyle& style_;
    double line_;
};

}  // namespace

Document consent_sheet(const std::vector<FormBlock>& blocks, const FormFacts& facts,
                       TextRuler& ruler, Paper paper) {
    SheetContent content;
    content.title = "Consent form";
    content.header.again = facts.client.empty() ? "Consent form" : "Consent form · " + facts.client;
    content.business_line = facts.business;
    content.private_line = facts.contact;
    const double scale = paper_size(paper, false).width / paper_size(Paper::a4, false).width;
    Document document;
    for (const double points : form_points) {
        SheetFlow flow(content, form_style(paper, std::max(points * scale, least_form_points)),
                       ruler);
        FormPage page(flow);
        for (const FormBlock& block : blocks) page.put(block);
        document = flow.finish();
        if (document.pages.size() == 1) break;
    }
    return document;
}

}  // namespace quarterturn
