#include "indexer/sheet/board_sheet.h"

#include "indexer/sheet/board_pages.h"
#include "indexer/sheet/heads.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double a4_margin_share = 0.048;         // of the paper's width: a mirror has no binding
constexpr double larger_type = 1.42;              // read from a step back
constexpr double room_without_look = 0.3;         // of a page, for a client without a look
constexpr double mm_below_without_look = 0.3;     // for each point of a name
const std::string left_to_right_mark = "\u200e";  // Unicode, UAX 9
constexpr std::array recipe_scales{1.0, 0.94, 0.88, 0.83, 0.78, 0.74, 0.70, 0.66};

SheetStyle board_style(Paper paper) {
    SheetStyle style = sheet_style(paper);
    style.margin = style.paper.width * a4_margin_share;
    style.columns = 3;
    style.above_foot = style.gutter;
    style.name_points *= 1.6;
    style.lead_points *= larger_type;
    style.heading_points *= larger_type;
    style.body_points *= larger_type;
    style.caption_points *= larger_type;
    return style;
}

SheetStyle scaled(SheetStyle style, double scale) {
    style.heading_points *= scale;
    style.body_points *= scale;
    style.caption_points *= scale;
    return style;
}

SheetContent board_content(const WeddingBoard& board, const std::string& business_line) {
    SheetContent content;
    content.title = "Wedding board, " + board.wedding.name;
    content.header.again = board.wedding.name + " · " + long_date(board.wedding.date);
    content.business_line = business_line;
    return content;
}

SheetBand photos_of_look(const BoardLook& look, const Path& folder) {
    SheetBand band;
    for (const BoardShot& shot : look.shots) {
        SheetCell cell;
        if (shot.photo) cell = photo_cell(*shot.photo, folder);
        cell.title = capitalised(word(shot.angle));
        cell.note = shot.photo && shot.photo->tags.mirrored ? "from a mirror" : "";
        cell.empty = shot.empty;
        band.cells.push_back(std::move(cell));
    }
    return band;
}

// How many pages the recipe takes with this type.
std::size_t pages_with(const SheetContent& content, const SheetStyle& style, TextRuler& ruler,
                       const LookPage& page) {
    SheetFlow trial(content, style, ruler);
    trial.new_page();
    put_board_recipe(trial, page);
    return trial.finish().pages.size() - 1;
}

class BoardPages {
  public:
    BoardPages(const SheetContent& content, const SheetStyle& style, TextRuler& ruler)
        : content_(content), style_(style), ruler_(ruler), flow_(content, style, ruler) {}

    void put(const LookPage& page) {
        const bool alone = page.look != nullptr || !without_look_;
        without_look_ = page.look == nullptr;
        if (alone || flow_.room() < flow_.room_on_new_page() * room_without_look) {
            if (std::exchange(begun_, true)) flow_.new_page();
        } else {
            flow_.down(flow_.style().name_points * mm_below_without_look);
        }
        put_board_front(flow_, page);
        if (page.look == nullptr) return;
        const auto fits = [&](double scale) {
            return pages_with(content_, scaled(style_, scale), ruler_, page) == 1;
        };
        const auto scale = std::ranges::find_if(recipe_scales, fits);
        if (scale != recipe_scales.end()) flow_.set_style(scaled(style_, *scale));
        flow_.new_page();
        put_board_recipe(flow_, page);
        flow_.set_style(style_);
    }

    Document finish(const std::vector<std::string>& remarks) {
        if (!remarks.empty()) put_section(flow_, "Not in the running order");
        for (const std::string& remark : remarks) {
            // Begins with a name of any script, and is a sentence from left to right.
            put_paragraph(flow_, text_item(left_to_right_mark + remark, style_.body_points));
        }
        return flow_.finish();
    }

  private:
    const SheetContent& content_;
    SheetStyle style_;
    TextRuler& ruler_;
    SheetFlow flow_;
    bool begun_ = false;
    bool without_look_ = false;  // the client before
};

}  // namespace

Document board_sheet(const WeddingBoard& board, Library& library, Decoder& decoder,
                     TextRuler& ruler, Paper paper) {
    const SheetStyle style = board_style(paper);
    const SheetContent content = board_content(board, business_words(library.settings()));
    SheetContent photos;
    for (const BoardClient& client : board.clients) {
        for (const BoardLook& look : client.looks) {
            photos.bands.push_back(photos_of_look(look, library.folder()));
        }
    }
    find_heads(photos, style, library, decoder);
    BoardPages pages(content, style, ruler);
    auto band = photos.bands.begin();
    for (const BoardClient& client : board.clients) {
        if (client.looks.empty()) pages.put({board, client, nullptr, {}});
        for (const BoardLook& look : client.looks) {
            pages.put({board, client, &look, std::move((band++)->cells)});
        }
    }
    return pages.finish(board.remarks);
}

}  // namespace quarterturn
