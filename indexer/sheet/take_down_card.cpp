#include "indexer/sheet/take_down_card.h"

#include "indexer/sheet/caution_box.h"
#include "indexer/sheet/columns.h"
#include "indexer/sheet/heads.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/place_photo.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr std::size_t photos_in_a_row = 4;
constexpr double part_gap = 2.6;           // mm between the parts of the card
constexpr double card_caption_gap = 0.5;   // mm
constexpr double card_padding = 2;         // mm inside a frame
constexpr double title_scale = 1.9;        // by the type of the words
constexpr double number_scale = 1.35;      // of a step
constexpr double widest_photo = 0.85;      // of its height: a bun below the head is to be seen
constexpr double head_of_frame = 0.48;     // of the width inside the frame
constexpr double most_field_share = 0.08;  // of the page's height, once type is at its smallest
constexpr double foot_line_mm = 1.5 * 25.4 / 72;  // for each point of type
constexpr const char* cut_sentence =
    "Not all of it found room on one page: write the second look shorter in the recipe, or show "
    "her the recipe itself.";

// How the card is set: type in points, and a row of photos by the page's height.
struct CardSize {
    double points = least_card_points;
    double photo_share = 0.1;
    bool cut = false;  // nothing smaller is left: what finds no room is cut
};

constexpr std::array card_sizes{CardSize{17, 0.2},        CardSize{16, 0.18}, CardSize{15, 0.17},
                                CardSize{14, 0.16},       CardSize{13, 0.15}, CardSize{12.5, 0.13},
                                CardSize{12, 0.12},       CardSize{12, 0.1},  CardSize{12, 0.085},
                                CardSize{12, 0.085, true}};

SheetStyle card_style(Paper paper) {
    SheetStyle style = sheet_style(paper);
    style.columns = static_cast<int>(photos_in_a_row);
    style.footer_points = least_card_points;
    style.above_foot = style.gutter;
    style.footer = 2 * least_card_points * foot_line_mm + 1;
    return style;
}

SheetBand row_of(std::string name, const std::vector<BoardShot>& shots, const Path& folder) {
    SheetBand band{std::move(name), {}};
    for (const BoardShot& shot : shots) {
        if (band.cells.size() == photos_in_a_row) break;
        band.cells.push_back(photo_cell(*shot.photo, folder));
        band.cells.back().title = capitalised(word(shot.angle));
    }
    return band;
}

SheetBand row_of(std::string name, const std::vector<Photo>& photos, const Path& folder) {
    SheetBand band{std::move(name), {}};
    for (const Photo& photo : photos) {
        if (band.cells.size() == photos_in_a_row) break;
        band.cells.push_back(photo_cell(photo, folder));
    }
    return band;
}

class Card {
  public:
    Card(SheetFlow& flow, const TakeDown& card, std::span<const SheetBand> rows, CardSize size)
        : flow_(flow), style_(flow.style()), card_(card), rows_(rows), size_(size) {}

    // Whether all of it found room.
    bool put() {
        put_title();
        put_cautions();
        for (const SheetBand& row : rows_) put_row(row);
        put_pins();
        put_steps();
        std::string lacks;
        for (const std::string& lack : card_.lacks) add_part(lacks, " ", lack);
        if (!lacks.empty()) put_words("! " + lacks, size_.points, true);
        if (cut_) put_words(cut_sentence, size_.points, true);
        return !cut_ && flow_.room() >= 0;
    }

  private:
    // What is left for the text: all of it, or, where it has to be cut, what the rest leaves.
    std::string within(const std::string& words, double points, double width, double most) {
        if (!size_.cut) return words;
        const TextItem text = text_item(words, points);
        if (flow_.height_of(text, width) <= most) return words;
        cut_ = true;
        if (most < flow_.line_height(points)) return {};
        const std::string first = split_text(flow_.ruler(), text, width, most).first;
        return first.substr(0, first.rfind(' ')) + " …";  // in the place of the last word
    }

    // Where all of it cannot stand there, this part may not take what the last sentence needs.
    bool has_room(double height) {
        if (!size_.cut || height <= room_above_sentence()) return true;
        cut_ = true;
        return false;
    }

    double field() const { return style_.paper.height * most_field_share; }

    // Below this nothing is put but the sentence that it is not all.
    double room_above_sentence() {
        const TextItem sentence = text_item(cut_sentence, size_.points, true);
        return flow_.room() - flow_.height_of(sentence, style_.width());
    }

    void put_words(const std::string& words, double points, bool bold = false,
                   Tone tone = Tone::ink) {
        if (words.empty()) return;
        TextItem text = text_item(words, points, bold, tone);
        text.align = Align::start;
        const double height = flow_.height_of(text, style_.width());
        if (words != cut_sentence && !has_room(height)) return;
        flow_.down(flow_.put_text(text, style_.left(), flow_.y(), style_.width(), height));
    }

    void put_title() {
        const double large = size_.points * title_scale;
        put_words(within("Letting the hair down: " + card_.client.name, large, style_.width(),
                         2.5 * flow_.line_height(large)),
                  large, true);
        std::string looks = card_.from;
        add_part(looks, ", then ", card_.to);
        put_words(within(looks, size_.points, style_.width(), field() / 2), size_.points);
        std::string when = card_.at.empty() ? "" : "At " + card_.at;
        add_part(when, ", ", card_.done_by.empty() ? "" : "done by " + card_.done_by);
        put_words(within(when, size_.points * number_scale, style_.width(), field()),
                  size_.points * number_scale, true);
        flow_.down(part_gap / 2);
    }

    void put_cautions() {
        std::string words;
        for (const std::string& line : card_.cautions) add_part(words, "\n", "• " + line);
        words = within(words, size_.points, style_.width() * 0.85, 1.5 * field());
        flow_.down(
            put_caution_box(flow_, {{words}, size_.points, true}, style_.left(), style_.width()) +
            part_gap);
    }

    void put_row(const SheetBand& row) {
        const double photos_height = style_.paper.height * size_.photo_share;
        const double around = 3 * flow_.line_height(size_.points) + part_gap + card_caption_gap;
        if (row.cells.empty() || !has_room(photos_height + around)) return;
        put_words(row.name, size_.points, true);
        const Box cell{style_.left(), flow_.y(), style_.column_width(style_.columns),
                       photos_height};
        std::vector<const SheetPhoto*> photos;
        for (const SheetCell& each : row.cells) photos.push_back(&*each.photo);
        const double width = std::min(cell.width, widest_photo * cell.height);
        const double share = head_share_of(photos, width / cell.height);
        Box box = cell;
        double captions = 0;
        for (const SheetCell& each : row.cells) {
            const Box middle{box.x + (box.width - width) / 2, box.y, width, box.height};
            place_photo(flow_, *each.photo, middle, share);
            TextItem caption =
                text_item(std::to_string(++photo_number_) + ". " + each.title, size_.points, true);
            caption.align = Align::centre;
            const double height = flow_.height_of(caption, box.width);
            flow_.put_text(caption, box.x, box.y + box.height + card_caption_gap, box.width,
                           height);
            captions = std::max(captions, height);
            box.x += cell.width + style_.gutter;
        }
        flow_.down(cell.height + card_caption_gap + captions + part_gap);
    }

    // Which pins go, which stay, and where they sit on the head.
    void put_pins() {
        const bool drawn = !card_.places.marks.empty();
        if (card_.taken_out.empty() && card_.stays.empty() && !drawn) return;
        const int frames = drawn ? 3 : 2;
        const double width = (style_.width() - (frames - 1) * style_.gutter) / frames;
        const double inside = width - 2 * card_padding;
        const double top = flow_.line_height(size_.points * number_scale);
        const auto words_of = [&](const std::string& words) {
            TextItem text = text_item(within(words, size_.points, inside, field()), size_.points);
            text.align = Align::start;
            return text;
        };
        const TextItem out = words_of(card_.taken_out);
        const TextItem stays = words_of(card_.stays);
        const double head = inside * head_of_frame;
        const double beside = inside - head - card_padding;
        TextItem places = text_item(
            within(drawn ? marks_in_words() : "", size_.points, beside, field()), size_.points);
        places.align = Align::start;
        const double words =
            std::max({flow_.height_of(out, inside), flow_.height_of(stays, inside),
                      drawn ? std::max(head, flow_.height_of(places, beside)) : 0});
        const double height = top + words + 2 * card_padding;
        if (!has_room(height + part_gap)) return;
        double x = style_.left();
        const double inside_y = flow_.y() + card_padding + top;
        const auto put_frame = [&](const char* heading, const TextItem& text, double text_x,
                                   double text_width) {
            flow_.put(BarItem{{x, flow_.y(), width, height}, BarFill::plain});
            flow_.put_text(text_item(heading, size_.points * number_scale, true), x + card_padding,
                           flow_.y() + card_padding, inside, top);
            flow_.put_text(text, x + card_padding + text_x, inside_y, text_width, words);
        };
        for (const auto& [heading, text] : {std::pair("Take out", out), {"Leave alone", stays}}) {
            if (!text.text.empty()) put_frame(heading, text, 0, inside);
            x += width + style_.gutter;
        }
        if (drawn) {
            put_frame("Where they sit", places, head + card_padding, beside);
            flow_.put(HeadItem{{x + card_padding, inside_y, head, head}, card_.places});
        }
        flow_.down(height + part_gap);
    }

    std::string marks_in_words() const {
        std::string words;
        for (const PlanMark& mark : card_.places.marks) {
            add_part(words, "\n", std::to_string(mark.number) + ". " + mark.words);
        }
        return words;
    }

    // None after one that is not whole: a step left out in the middle would not be missed.
    void put_steps() {
        bool whole = true;
        for (std::size_t i = 0; i < card_.steps.size() && whole; ++i) whole = put_step(i);
    }

    bool put_step(std::size_t index) {
        const double large = size_.points * number_scale;
        const double line = flow_.line_height(large);
        if (!has_room(line + part_gap / 2)) return false;
        const double tick = line * 0.8;
        const double indent = tick + 1.9 * line;
        const double width = style_.width() - indent;
        const double shift = std::max(0.0, (line - flow_.line_height(size_.points)) / 2);
        const double most = size_.cut ? room_above_sentence() - part_gap / 2 - shift : 0;
        TextItem words =
            text_item(within(card_.steps[index], size_.points, width, most), size_.points);
        words.align = Align::start;
        const double top = flow_.y();
        flow_.put(TickItem{{style_.left(), top + (line - tick) / 2, tick, tick}, false});
        flow_.put_text(text_item(std::to_string(index + 1) + ".", large, true),
                       style_.left() + tick + line * 0.4, top, line * 1.5, line);
        const double height = flow_.height_of(words, width);
        flow_.put_text(words, style_.left() + indent, top + shift, width, height);
        flow_.down(std::max(line, height + shift) + part_gap / 2);
        return words.text == card_.steps[index];
    }

    SheetFlow& flow_;
    const SheetStyle& style_;
    const TakeDown& card_;
    std::span<const SheetBand> rows_;
    CardSize size_;
    int photo_number_ = 0;
    bool cut_ = false;
};

}  // namespace

Document take_down_card(const TakeDown& take_down, Library& library, Decoder& decoder,
                        TextRuler& ruler, Paper paper) {
    const SheetStyle style = card_style(paper);
    SheetContent content;
    content.title = "Take-down card, " + take_down.client.name;
    content.business_line = library.settings().get(business_name_setting).value_or("");
    content.bands = {row_of("How it is now", take_down.before, library.folder()),
                     row_of("On the way", take_down.during, library.folder()),
                     row_of("How it should look after", take_down.after, library.folder())};
    find_heads(content, style, library, decoder);
    const auto fits = [&](CardSize size) {
        SheetFlow trial(content, style, ruler);
        return Card(trial, take_down, content.bands, size).put();
    };
    const auto size = std::ranges::find_if(card_sizes, fits);
    SheetFlow flow(content, style, ruler);
    Card(flow, take_down, content.bands, size == card_sizes.end() ? card_sizes.back() : *size)
        .put();
    return flow.finish();
}

}  // namespace quarterturn
