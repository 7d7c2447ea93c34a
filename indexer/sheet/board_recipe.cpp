#include "indexer/sheet/board_pages.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/recipe_block.h"
#include "indexer/sheet/running_text.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

constexpr double step_type = 1.22;     // by the type of the rest
constexpr double tick_of_line = 0.95;  // side of the box to tick, by a line of a step
constexpr double side_share = 0.15;    // of the width, for pins and waiting
constexpr double step_gap = 1.3;       // mm above and below a step

class BoardRecipe {
  public:
    BoardRecipe(SheetFlow& flow, const LookPage& page)
        : flow_(flow), style_(flow.style()), page_(page), look_(*page.look) {}

    void put() {
        put_title();
        if (look_.recipe() == nullptr) {
            put_paragraph(flow_, text_item("No recipe of this look is written yet.",
                                           style_.lead_points, true));
            return;
        }
        put_parts("Before the build", look_.before_build, look_.before_build_cautions);
        if (!look_.steps.empty()) put_section(flow_, "Build");
        for (std::size_t i = 0; i < look_.steps.size(); ++i) put_step(i);
        put_pins();
        put_parts("After the build", look_.after_build, look_.after_build_cautions);
    }

  private:
    void put_title() {
        std::string words = page_.client.client.name;
        add_part(words, " · ", look_words(look_.state.look));
        if (look_.state.look.worn == Worn::evening) {
            add_part(words, " · ", evening_time(page_.client, look_));
        } else {
            add_part(words, " · ", ready_text(page_.client));
        }
        put_paragraph(flow_, text_item(words, style_.lead_points * 1.15, true));
        flow_.down(step_gap);
    }

    void put_parts(const char* heading, const std::vector<RecipePart>& parts,
                   const std::vector<std::string>& cautions) {
        if (parts.empty()) return;
        flow_.down(step_gap);
        SheetRecipe recipe;
        recipe.heading = heading;
        if (!cautions.empty()) recipe.cautions = {under_one_mark(cautions)};
        for (const RecipePart& part : parts) recipe.parts.push_back(in_one_line(part));
        put_recipe(flow_, recipe, RecipeRoom::anywhere);
    }

    // Short facts stand one behind the other; what is numbered keeps its lines.
    static RecipePart in_one_line(const RecipePart& part) {
        if (part.heading == "Second look") return part;
        RecipePart line{part.heading, {{}}};
        std::string& all = line.lines.front();
        for (const std::string& each : part.lines)
            add_part(all, all.ends_with('.') ? " " : "; ", each);
        return line;
    }

    static std::string under_one_mark(const std::vector<std::string>& cautions) {
        std::string words;
        for (const std::string& caution : cautions) add_part(words, " ", caution);
        return words.empty() ? words : "! " + words;
    }

    double step_points() const { return style_.body_points * step_type; }

    std::string words_of(std::size_t number) const {
        return std::to_string(number + 1) + ". " + look_.steps[number].words;
    }

    static std::string side_words(const BoardStep& step) {
        std::string words = pins_count_text(step);
        add_part(words, "\n", wait_text(step));
        return words;
    }

    struct StepTexts {
        TextItem words;
        TextItem cautions;
        TextItem beside;  // pins and waiting
    };

    StepTexts texts_of(std::size_t number) const {
        const BoardStep& step = look_.steps[number];
        StepTexts texts{text_item(words_of(number), step_points()),
                        text_item(under_one_mark(step.cautions), style_.body_points * 0.9, true),
                        text_item(side_words(step), style_.body_points * 1.1, true)};
        texts.words.align = texts.cautions.align = Align::start;
        texts.beside.align = Align::right;
        return texts;
    }

    double height_of_text(const TextItem& text, double width) {
        return text.text.empty() ? 0 : flow_.height_of(text, width);
    }

    double put_text(const TextItem& text, double x, double y, double width) {
        return text.text.empty() ? 0 : flow_.put_text(text, x, y, width, flow_.room());
    }

    void put_step(std::size_t number) {
        const StepTexts texts = texts_of(number);
        const double tick = flow_.line_height(step_points()) * tick_of_line;
        const double left = style_.left() + tick + style_.gutter;
        const double side = style_.width() * side_share;
        const double width = style_.left() + style_.width() - left - side - style_.gutter;
        const double words = height_of_text(texts.words, width);
        const double height = std::max({words + height_of_text(texts.cautions, width),
                                        height_of_text(texts.beside, side), tick});
        if (flow_.room() < height + 2 * step_gap && !flow_.page_is_fresh()) flow_.new_page();
        put_rule();
        const double top = flow_.y();
        flow_.put(TickItem{{style_.left(), top, tick, tick}, look_.steps[number].done});
        if (height > flow_.room()) return put_long_step(texts, left - style_.left());
        put_text(texts.words, left, top, width);
        put_text(texts.cautions, left, top + words, width);
        put_text(texts.beside, style_.left() + style_.width() - side, top, side);
        flow_.down(height + step_gap);
    }

    // One that is longer than a page.
    void put_long_step(const StepTexts& texts, double indent) {
        for (const TextItem* text : {&texts.words, &texts.cautions, &texts.beside}) {
            put_paragraph(flow_, *text, indent);
        }
    }

    void put_rule() {
        flow_.put(RuleItem{style_.left(), flow_.y(), style_.left() + style_.width(), flow_.y()});
        flow_.down(step_gap);
    }

    void put_pins() {
        const std::string words = all_pins_text(look_);
        if (words.empty()) return;
        put_rule();
        put_paragraph(flow_, text_item(words, style_.body_points * 1.1, true));
    }

    SheetFlow& flow_;
    const SheetStyle& style_;
    const LookPage& page_;
    const BoardLook& look_;
};

}  // namespace

void put_board_recipe(SheetFlow& flow, const LookPage& page) {
    BoardRecipe(flow, page).put();
}

}  // namespace quarterturn
