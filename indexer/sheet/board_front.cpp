#include "indexer/sheet/board_pages.h"
#include "indexer/sheet/caution_box.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/place_photo.h"
#include "indexer/sheet/plan_grid.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double ready_share = 0.27;  // of the width, for the time she must be ready
constexpr double name_smaller = 0.68;
constexpr double most_name_lines = 2.4;
constexpr double after_lines = 1.6;           // mm
constexpr double least_photos_share = 0.38;   // of the page's height, else they begin a new page
constexpr double caution_smaller = 0.72;      // where there is more than a few lines of them
constexpr double usual_caution_share = 0.14;  // of the page's height
constexpr double caption_smaller = 0.76;      // of a photo that was turned
constexpr std::size_t most_changes = 4;
constexpr double block_padding = 2;  // mm
constexpr std::array block_scales{1.0, 0.9, 0.8, 0.7};

// What stands where the head plan leaves room.
struct Block {
    std::string heading;
    std::string words;
};

class BoardFront {
  public:
    BoardFront(SheetFlow& flow, const LookPage& page)
        : flow_(flow), style_(flow.style()), page_(page) {}

    void put() {
        put_names();
        put_cautions();
        if (page_.look == nullptr) {
            put_line("No look of hers is recorded for this wedding yet.", style_.lead_points, true);
            put_ticked(page_.client.is_done(), "Done");
            return;
        }
        put_standing();
        flow_.down(after_lines);
        if (flow_.room() < style_.paper.height * least_photos_share) flow_.new_page();
        put_photos();
    }

  private:
    void put_line(const std::string& words, double points, bool bold = false,
                  Tone tone = Tone::ink) {
        if (words.empty()) return;
        TextItem text = text_item(words, points, bold, tone);
        text.align = Align::start;
        flow_.down(flow_.put_text(text, style_.left(), flow_.y(), style_.width(), flow_.room()));
    }

    // The morning's times are none of an evening look.
    bool is_evening() const {
        return page_.look != nullptr && page_.look->state.look.worn == Worn::evening;
    }

    std::string when_label(const std::string& when) const {
        if (is_evening()) return when.empty() ? "in the evening" : "in the evening, at";
        return when.empty() ? ready_text(page_.client) : "ready by";
    }

    double put_ready(double x, double width) {
        const std::string when =
            is_evening() ? evening_time(page_.client, *page_.look) : page_.client.ready_by;
        TextItem label = text_item(when_label(when), style_.lead_points, false, Tone::soft);
        label.align = Align::right;
        double y = flow_.y();
        y += flow_.put_text(label, x, y, width, flow_.room());
        if (when.empty()) return y;
        TextItem time = text_item(when, style_.name_points, true);
        time.align = Align::right;
        if (flow_.height_of(time, width) > 1.5 * flow_.line_height(time.points)) {
            time.points = style_.lead_points;
        }
        return y + flow_.put_text(time, x, y, width, flow_.room());
    }

    void put_names() {
        const double ready_width = style_.width() * ready_share;
        const double names_width = style_.width() - ready_width - style_.gutter;
        const double ready_end =
            put_ready(style_.left() + names_width + style_.gutter, ready_width);
        TextItem name = text_item(page_.client.client.name, style_.name_points, true);
        if (flow_.height_of(name, names_width) > most_name_lines * flow_.line_height(name.points)) {
            name.points *= name_smaller;
        }
        double y = flow_.y();
        const double most = style_.paper.height / 4;
        y += flow_.put_text(name, style_.left(), y, names_width, most);
        std::string about = page_.client.role;
        if (page_.look != nullptr) add_part(about, " · ", look_words(page_.look->state.look));
        if (!about.empty()) {
            y += flow_.put_text(text_item(capitalised(about), style_.lead_points), style_.left(), y,
                                names_width, most);
        }
        const std::string chair = is_evening() ? "" : chair_text(page_.board, page_.client);
        if (!chair.empty()) {
            y += flow_.put_text(text_item(chair, style_.lead_points, false, Tone::soft),
                                style_.left(), y, names_width, most);
        }
        flow_.down(std::max(y, ready_end) - flow_.y() + after_lines);
    }

    void put_cautions() {
        CautionBox box{page_.client.cautions, style_.lead_points, true};
        if (height_of(flow_, box, style_.width()) > style_.paper.height * usual_caution_share) {
            box.points *= caution_smaller;
        }
        flow_.down(put_caution_box(flow_, box, style_.left(), style_.width()) + after_lines);
    }

    void put_ticked(bool ticked, const std::string& words) {
        const double line = flow_.line_height(style_.lead_points);
        const double side = line * 0.72;
        flow_.put(TickItem{{style_.left(), flow_.y() + (line - side) / 2, side, side}, ticked});
        const double indent = side + style_.gutter * 0.7;
        flow_.down(flow_.put_text(text_item(words, style_.lead_points, true),
                                  style_.left() + indent, flow_.y(), style_.width() - indent,
                                  flow_.room()));
    }

    void put_standing() {
        const BoardLook& look = *page_.look;
        std::string words = look.standing;
        const std::size_t told = std::min(look.changes.size(), most_changes);
        if (told > 0) words += look.state.sign_off ? " Changed since:" : "";
        put_ticked(look.state.sign_off.has_value(), words);
        for (std::size_t i = 0; i < told; ++i) put_line(look.changes[i], style_.body_points);
        if (look.changes.size() > told) {
            put_line("And " + std::to_string(look.changes.size() - told) +
                         " more: see the look in Quarterturn.",
                     style_.body_points);
        }
    }

    void put_photos() {
        const double caption = flow_.line_height(style_.caption_points) + 1;
        const Box area{style_.left(), flow_.y(), style_.width(), flow_.room()};
        std::vector<Angle> angles;
        for (const BoardShot& shot : page_.look->shots) angles.push_back(shot.angle);
        const PlanGrid grid = plan_grid(angles, area, style_.gutter, caption);
        std::vector<const SheetPhoto*> photos;
        for (const SheetCell& cell : page_.cells) {
            if (cell.photo) photos.push_back(&*cell.photo);
        }
        const double share =
            head_share_of(photos, grid.photos.front().width / grid.photos.front().height);
        for (std::size_t i = 0; i < page_.cells.size(); ++i) {
            put_cell(page_.cells[i], grid.photos[i], share, caption);
        }
        put_blocks(grid.free);
    }

    void put_cell(const SheetCell& cell, const Box& box, double share, double caption) {
        if (cell.photo)
            place_photo(flow_, *cell.photo, box, share);
        else
            flow_.put(FrameItem{box, cell.empty, style_.body_points});
        std::string words = cell.title;
        add_part(words, " · ", cell.note);
        TextItem text = text_item(words, style_.caption_points, true);
        text.align = Align::centre;
        if (flow_.height_of(text, box.width) > caption) text.points *= caption_smaller;
        flow_.put_text(text, box.x, box.y + box.height + 0.6, box.width, caption - 0.6);
    }

    std::vector<Block> blocks() const {
        std::vector<Block> blocks;
        const auto add = [&](const char* wanted, const char* heading) {
            for (const auto* parts : {&page_.look->before_build, &page_.look->after_build}) {
                for (const RecipePart& part : *parts) {
                    if (part.heading != wanted) continue;
                    std::string words;
                    for (const std::string& line : part.lines) add_part(words, "\n", line);
                    blocks.push_back({heading, words});
                }
            }
        };
        add("Parting", "Parting");
        add("Accessory", "Accessory");
        add("Feedback", "What she said");
        return blocks;
    }

    void put_blocks(std::vector<Box> free) {
        const Recipe* recipe = page_.look->recipe();
        if (recipe == nullptr) return;
        const HeadDrawing drawing = drawing_with_accessories(*recipe);
        if (drawing != HeadDrawing{} && !free.empty()) {
            put_drawing(drawing, free.front());
            free.erase(free.begin());
        }
        std::size_t next = 0;
        for (const Block& block : blocks()) {
            if (next < free.size() && put_block(block, free[next])) ++next;
        }
    }

    void put_drawing(const HeadDrawing& drawing, Box box) {
        std::string words;
        for (const PlanMark& mark : drawing.marks) {
            if (mark.words.empty()) continue;
            add_part(words, " · ", std::to_string(mark.number) + " " + mark.words);
        }
        TextItem legend = text_item(words, style_.caption_points, true);
        legend.align = Align::centre;
        const double height = words.empty() ? 0 : flow_.height_of(legend, box.width);
        const double head = std::max(box.height - height - block_padding, box.height / 2);
        flow_.put(HeadItem{{box.x, box.y, box.width, head}, drawing});
        if (height == 0) return;
        flow_.put_text(legend, box.x, box.y + head + block_padding / 2, box.width,
                       box.height - head);
    }

    // Only where all of it finds room: the recipe says it too.
    bool put_block(const Block& block, const Box& box) {
        const double width = box.width - 2 * block_padding;
        for (const double scale : block_scales) {
            const TextItem heading =
                text_item(block.heading, style_.body_points * scale, true, Tone::accent);
            TextItem words = text_item(block.words, style_.body_points * scale);
            words.align = Align::start;
            const double top = flow_.line_height(heading.points);
            const double height = top + flow_.height_of(words, width);
            if (height + 2 * block_padding > box.height) continue;
            flow_.put(
                BarItem{{box.x, box.y, box.width, height + 2 * block_padding}, BarFill::plain});
            flow_.put_text(heading, box.x + block_padding, box.y + block_padding, width, top);
            flow_.put_text(words, box.x + block_padding, box.y + block_padding + top, width,
                           height - top);
            return true;
        }
        return false;
    }

    SheetFlow& flow_;
    const SheetStyle& style_;
    const LookPage& page_;
};

}  // namespace

void put_board_front(SheetFlow& flow, const LookPage& page) {
    BoardFront(flow, page).put();
}

}  // namespace quarterturn
