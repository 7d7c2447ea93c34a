#include "indexer/sheet/as_made_sheet.h"

#include <algorithm>

#include "indexer/sheet/header.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/pair_on_paper.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double inches = 25.4;  // mm

struct LookOnPaper {
    const ClientAsMade* client = nullptr;
    const LookAsMade* look = nullptr;
    std::vector<PairOnPaper> pairs;
};

SheetContent content_of(const WeddingAsMade& made, const std::string& business_line) {
    SheetContent content;
    content.title = "As agreed, as made: " + made.wedding.name;
    content.header.client = made.wedding.name;
    content.header.lines = wedding_words(made.wedding);
    content.header.lines.front() = "As agreed, as made";
    content.header.again = "As agreed, as made · " + made.wedding.name;
    content.business_line = business_line;
    return content;
}

std::vector<LookOnPaper> looks_on_paper(const WeddingAsMade& made) {
    std::vector<LookOnPaper> looks;
    for (const ClientAsMade& client : made.clients) {
        for (const LookAsMade& look : client.looks) {
            LookOnPaper on_paper{&client, &look, {}};
            for (const AgreedPair& pair : look.pairs) {
                if (pair.agreed || pair.made) on_paper.pairs.push_back({pair, {}, {}});
            }
            if (!on_paper.pairs.empty()) looks.push_back(std::move(on_paper));
        }
    }
    return looks;
}

std::string when_words(const Photo& photo) {
    if (!photo.moment) return "time unknown";
    return long_date(date_of(*photo.moment)) + ", " + clock_text(*photo.moment);
}

class AsMadePages {
  public:
    AsMadePages(SheetFlow& flow, const Path& folder) : flow_(flow), folder_(folder) {
        const SheetStyle& style = flow.style();
        pair_gutter_ = 3 * style.gutter;
        cell_width_ = ((style.width() - pair_gutter_) / 2 - style.gutter) / 2;
    }

    double cell_width() const { return cell_width_; }
    double cell_height() const { return cell_width_ / pair_cell_shape; }
    cv::Size cell_pixels() const {
        return {cvCeil(cell_width() / inches * print_dpi),
                cvCeil(cell_height() / inches * print_dpi)};
    }

    void put_look(const LookOnPaper& on_paper) {
        const double heading = 3 * flow_.line_height(flow_.style().heading_points);
        if (flow_.room() < heading + row_height(on_paper, 0)) flow_.new_page();
        put_heading(on_paper);
        for (std::size_t first = 0; first < on_paper.pairs.size(); first += 2) {
            if (flow_.room() < row_height(on_paper, first)) flow_.new_page();
            put_row(on_paper, first);
        }
        for (const std::string& hint : on_paper.look->hints) {
            put_paragraph(flow_, text_item(hint, flow_.style().body_points));
        }
        put_changes(*on_paper.look);
        flow_.down(flow_.style().space);
    }

  private:
    void put_heading(const LookOnPaper& on_paper) {
        std::string name = on_paper.client->client.name;
        add_part(name, " · ", on_paper.client->role);
        put_section(flow_, name);
        std::string look = look_words(on_paper.look->look);
        const auto& signed_at = on_paper.look->signed_at;
        add_part(look, " · ",
                 signed_at ? "signed off " + long_date(date_of(*signed_at)) : "not signed off");
        put_paragraph(flow_, text_item(look, flow_.style().body_points));
        flow_.down(flow_.style().gutter / 2);
    }

    std::vector<TextItem> captions(const PairOnPaper& shown, std::size_t side) const {
        const auto& photo = side == 0 ? shown.pair.agreed : shown.pair.made;
        const double points = flow_.style().caption_points;
        std::vector<TextItem> texts{text_item(side == 0 ? "As agreed" : "As made", points, true)};
        if (photo) {
            std::string when = when_words(*photo);
            add_part(when, " · ", photo_note(*photo));
            texts.push_back(text_item(when, points));
        }
        for (TextItem& text : texts) text.align = Align::start;
        return texts;
    }

    TextItem angle_of(const PairOnPaper& shown) const {
        TextItem text =
            text_item(capitalised(word(shown.pair.angle)), flow_.style().body_points, true);
        text.align = Align::start;
        return text;
    }

    std::vector<TextItem> remarks_of(const PairOnPaper& shown) const {
        std::vector<TextItem> texts;
        for (const std::string& remark : shown.remarks) {
            texts.push_back(text_item(remark, flow_.style().body_points));
        }
        for (TextItem& text : texts) text.align = Align::start;
        return texts;
    }

    double height_of(const std::vector<TextItem>& texts, double width) const {
        double height = 0;
        for (const TextItem& text : texts) height += flow_.height_of(text, width);
        return height;
    }

    double pair_width() const { return 2 * cell_width_ + flow_.style().gutter; }

    double row_height(const LookOnPaper& on_paper, std::size_t first) const {
        double height = 0;
        for (std::size_t i = first; i < std::min(first + 2, on_paper.pairs.size()); ++i) {
            const PairOnPaper& shown = on_paper.pairs[i];
            const double below = std::max(height_of(captions(shown, 0), cell_width_),
                                          height_of(captions(shown, 1), cell_width_));
            height = std::max(height, below + height_of(remarks_of(shown), pair_width()) +
                                          flow_.height_of(angle_of(shown), pair_width()));
        }
        return height + cell_height() + flow_.style().gutter;
    }

    void put_row(const LookOnPaper& on_paper, std::size_t first) {
        const double height = row_height(on_paper, first);
        double x = flow_.style().left();
        for (std::size_t i = first; i < std::min(first + 2, on_paper.pairs.size()); ++i) {
            put_pair(on_paper.pairs[i], x);
            x += pair_width() + pair_gutter_;
        }
        flow_.down(height);
    }

    void put_texts(const std::vector<TextItem>& texts, double x, double& y, double width) {
        for (const TextItem& text : texts) {
            y += flow_.put_text(text, x, y, width, flow_.style().bottom() - y);
        }
    }

    void put_pair(const PairOnPaper& shown, double x) {
        const double top = flow_.y() + flow_.put_text(angle_of(shown), x, flow_.y(), pair_width(),
                                                      flow_.style().bottom() - flow_.y());
        double lowest = top;
        for (std::size_t side = 0; side < 2; ++side) {
            const double left =
                x + static_cast<double>(side) * (cell_width_ + flow_.style().gutter);
            const Box cell{left, top, cell_width_, cell_height()};
            put_photo(shown, side, cell);
            double y = cell.y + cell.height + 0.5;
            put_texts(captions(shown, side), left, y, cell_width_);
            lowest = std::max(lowest, y);
        }
        put_texts(remarks_of(shown), x, lowest, pair_width());
    }

    void put_photo(const PairOnPaper& shown, std::size_t side, const Box& cell) {
        const auto& photo = side == 0 ? shown.pair.agreed : shown.pair.made;
        if (!photo) {
            flow_.put(FrameItem{
                cell, side == 0 ? "No photo from before the day" : "No photo of the day"});
            return;
        }
        PhotoItem item = photo_cell(*photo, folder_).photo->item;
        item.box = cell;
        if (!shown.pictures[side].empty()) {
            item.picture = shown.pictures[side];
            item.mirrored = false;  // turned already
        }
        flow_.put(item);
    }

    void put_changes(const LookAsMade& look) {
        if (!look.signed_at) return;
        const double points = flow_.style().body_points;
        if (look.changes.empty()) {
            return put_paragraph(flow_, text_item("The recipe is as it was signed off.", points));
        }
        put_paragraph(flow_, text_item("Changed in the recipe since sign-off", points, true));
        for (const ToldChange& change : look.changes) {
            const std::string was = joined_lines(change.was, "; ");
            const std::string is = joined_lines(change.is, "; ");
            put_paragraph(flow_, text_item(change.what + ": " + (was.empty() ? "nothing" : was) +
                                               ", now " + (is.empty() ? "nothing" : is) + ".",
                                           points));
        }
    }

    static std::string joined_lines(const std::vector<std::string>& lines, const char* between) {
        std::string text;
        for (const std::string& line : lines) add_part(text, between, line);
        return text;
    }

    SheetFlow& flow_;
    Path folder_;
    double pair_gutter_ = 0;
    double cell_width_ = 0;
};

[[noreturn]] void refuse_empty(const Wedding& wedding) {
    throw StoreError("There are no after photos of the looks of " + wedding.name +
                     " yet, so nothing was written: bring photos of the trial or of the day in, "
                     "say which look and angle each shows, and try again.");
}

void lay_pairs(Library& library, Decoder& decoder, std::vector<LookOnPaper>& looks, cv::Size cell,
               const std::function<void(int, int)>& progress) {
    std::vector<PairOnPaper*> pairs;
    for (LookOnPaper& look : looks) {
        for (PairOnPaper& pair : look.pairs) pairs.push_back(&pair);
    }
    HeadFinder finder;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        lay_on_paper(library, decoder, finder, *pairs[i], cell);
        if (progress) progress(static_cast<int>(i) + 1, static_cast<int>(pairs.size()));
    }
}

}  // namespace

Document as_made_sheet(Library& library, Decoder& decoder, TextRuler& ruler, WeddingId wedding,
                       Paper paper, const std::function<void(int, int)>& progress) {
    const WeddingAsMade made = as_made(library, wedding);
    std::vector<LookOnPaper> looks = looks_on_paper(made);
    if (looks.empty()) refuse_empty(made.wedding);
    const SheetContent content = content_of(made, business_words(library.settings()));
    SheetFlow flow(content, sheet_style(paper), ruler);
    AsMadePages pages(flow, library.folder());
    lay_pairs(library, decoder, looks, pages.cell_pixels(), progress);
    put_header(flow, content.header);
    for (const LookOnPaper& look : looks) pages.put_look(look);
    return flow.finish();
}

}  // namespace quarterturn
