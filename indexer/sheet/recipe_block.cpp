#include "indexer/sheet/recipe_block.h"

#include "indexer/sheet/columns.h"

namespace quarterturn {
namespace {

constexpr double heading_gap = 1.0;    // mm below the heading
constexpr double panel_padding = 1.6;  // mm around the cautions
constexpr double panel_indent = 3.2;   // mm, for the bar at the panel's side
constexpr double block_gap = 1.8;      // mm between the recipe's parts
constexpr double drawing_share = 1.5;  // height of the drawing by that of the ring in the header
constexpr double drawing_gap = 3.0;    // mm between the drawing and its words
constexpr int least_lines =
    4;  // of a recipe longer than a page, below its heading; else a new page

std::deque<Paragraph> paragraphs_of(const SheetRecipe& recipe, const SheetStyle& style) {
    std::deque<Paragraph> result;
    for (const RecipePart& part : recipe.parts) {
        result.push_back({text_item(part.heading, style.body_points, true), block_gap, true});
        for (const std::string& words : part.lines) {
            TextItem text = text_item(words, style.body_points);
            text.align = Align::start;
            result.push_back({std::move(text), 0, false});
        }
    }
    return result;
}

Columns columns_at(const SheetFlow& flow, double height) {
    const SheetStyle& style = flow.style();
    const double gutter = style.gutter * 1.6;
    const double width = (style.width() - (style.text_columns - 1) * gutter) / style.text_columns;
    return {style.left(), flow.y(), height, width, gutter, style.text_columns};
}

std::string cautions_text(const SheetRecipe& recipe) {
    std::string text;
    for (const std::string& caution : recipe.cautions) {
        if (!text.empty()) text += '\n';
        text += caution;
    }
    return text;
}

TextItem caution_item(std::string words, const SheetStyle& style) {
    TextItem text = text_item(std::move(words), style.body_points);
    text.align = Align::start;
    return text;
}

double caution_width(const SheetStyle& style) {
    return style.width() - panel_indent - panel_padding;
}

double heading_height(const SheetFlow& flow) {
    return flow.line_height(flow.style().heading_points) + heading_gap;
}

double cautions_height(SheetFlow& flow, const SheetRecipe& recipe) {
    if (recipe.cautions.empty()) return 0;
    const TextItem text = caution_item(cautions_text(recipe), flow.style());
    return flow.height_of(text, caution_width(flow.style())) + 2 * panel_padding + block_gap;
}

void put_heading(SheetFlow& flow, const SheetRecipe& recipe) {
    const SheetStyle& style = flow.style();
    flow.put_text(text_item(recipe.heading, style.heading_points, true, Tone::accent), style.left(),
                  flow.y(), style.width(), flow.line_height(style.heading_points));
    flow.down(heading_height(flow));
}

void put_caution_panel(SheetFlow& flow, const std::string& words) {
    const SheetStyle& style = flow.style();
    const TextItem text = caution_item(words, style);
    const double height = flow.height_of(text, caution_width(style));
    flow.put(PanelItem{{style.left(), flow.y(), style.width(), height + 2 * panel_padding}, true});
    flow.put_text(text, style.left() + panel_indent, flow.y() + panel_padding, caution_width(style),
                  height);
    flow.down(height + 2 * panel_padding + block_gap);
}

void put_cautions(SheetFlow& flow, const SheetRecipe& recipe) {
    std::string rest = cautions_text(recipe);
    while (!rest.empty()) {
        const double room = flow.room() - 2 * panel_padding - block_gap;
        if (room < flow.line_height(flow.style().body_points) && !flow.page_is_fresh()) {
            flow.new_page();
            continue;
        }
        auto [now, later] = split_text(flow.ruler(), caution_item(rest, flow.style()),
                                       caution_width(flow.style()), room);
        put_caution_panel(flow, now);
        rest = std::move(later);
    }
}

double drawing_side(const SheetFlow& flow) {
    return drawing_share * flow.style().ring;
}

double beside_drawing(const SheetFlow& flow) {
    return drawing_side(flow) + drawing_gap;
}

TextItem drawing_words(const SheetDrawing& drawing, const SheetStyle& style) {
    std::string words;
    for (const std::string& line : drawing.lines) {
        if (!words.empty()) words += '\n';
        words += line;
    }
    TextItem text = text_item(std::move(words), style.body_points);
    text.align = Align::start;
    return text;
}

double drawing_height(SheetFlow& flow, const SheetRecipe& recipe) {
    if (!recipe.drawing) return 0;
    const double width = flow.style().width() - beside_drawing(flow);
    const double words = flow.height_of(drawing_words(*recipe.drawing, flow.style()), width);
    return std::max(drawing_side(flow), words) + block_gap;
}

void put_drawing(SheetFlow& flow, const SheetRecipe& recipe) {
    if (!recipe.drawing) return;
    const SheetStyle& style = flow.style();
    const double height = drawing_height(flow, recipe);
    if (flow.room() < height && !flow.page_is_fresh()) flow.new_page();
    const double side = drawing_side(flow);
    flow.put(HeadItem{{style.left(), flow.y(), side, side}, recipe.drawing->drawing});
    const double beside = beside_drawing(flow);
    flow.put_text(drawing_words(*recipe.drawing, style), style.left() + beside, flow.y(),
                  style.width() - beside, flow.room());
    flow.down(height);
}

void put_columns(SheetFlow& flow, std::deque<Paragraph> paragraphs) {
    while (!paragraphs.empty()) {
        const double least = 2 * flow.line_height(flow.style().body_points);
        if (flow.room() < least && !flow.page_is_fresh()) flow.new_page();
        Columns columns = columns_at(flow, flow.room());
        columns.height =
            balanced_height(flow.ruler(), paragraphs, columns, flow.room()).value_or(flow.room());
        FilledColumns filled = fill_columns(flow.ruler(), std::move(paragraphs), columns);
        for (TextItem& text : filled.texts) flow.put(std::move(text));
        flow.down(filled.height + flow.style().space);
        paragraphs = std::move(filled.rest);
    }
}

}  // namespace

std::optional<double> height_of_recipe(SheetFlow& flow, const SheetRecipe& recipe) {
    const double above =
        heading_height(flow) + cautions_height(flow, recipe) + drawing_height(flow, recipe);
    const double most = flow.room_on_new_page() - above;
    if (most <= 0) return std::nullopt;
    const auto columns = balanced_height(flow.ruler(), paragraphs_of(recipe, flow.style()),
                                         columns_at(flow, most), most);
    if (!columns) return std::nullopt;
    return above + *columns;
}

void put_recipe(SheetFlow& flow, const SheetRecipe& recipe, RecipeRoom room) {
    const double beginning = heading_height(flow) + cautions_height(flow, recipe) +
                             least_lines * flow.line_height(flow.style().body_points);
    const auto whole = room == RecipeRoom::one_page ? height_of_recipe(flow, recipe) : std::nullopt;
    const double wanted = whole.value_or(beginning);
    if (flow.room() < wanted && !flow.page_is_fresh()) flow.new_page();
    put_heading(flow, recipe);
    put_cautions(flow, recipe);
    put_drawing(flow, recipe);
    put_columns(flow, paragraphs_of(recipe, flow.style()));
}

}  // namespace quarterturn
