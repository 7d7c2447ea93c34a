#include "indexer/sheet/lay_out.h"

#include "indexer/sheet/bands.h"
#include "indexer/sheet/header.h"
#include "indexer/sheet/recipe_block.h"

namespace quarterturn {
namespace {

constexpr double most_shrinking = 0.66;  // of a cell's wanted height; less would cut into heads

std::size_t count_lines(std::span<const SheetBand> bands, int columns) {
    std::size_t lines = 0;
    for (const SheetBand& band : bands) {
        const auto per_line = static_cast<std::size_t>(columns);
        lines += (band.cells.size() + per_line - 1) / per_line;
    }
    return lines;
}

// The greatest cell height, up to the wanted one, at which the bands take no more than `room`;
// nothing when the cells would become too small.
std::optional<double> height_within(SheetFlow& flow, std::span<const SheetBand> bands,
                                    double wanted, double room) {
    const auto lines = static_cast<double>(count_lines(bands, flow.style().columns));
    if (lines == 0) return wanted;
    const double fitting = (room - height_of_bands(flow, bands, 0)) / lines;
    if (fitting < wanted * most_shrinking) return std::nullopt;
    return std::min(fitting, wanted);
}

double cell_height(SheetFlow& flow, const SheetContent& content) {
    const SheetStyle& style = flow.style();
    const double wanted = wanted_cell_height(content.bands, style);
    const auto recipe = content.recipe ? height_of_recipe(flow, *content.recipe) : 0.0;
    if (recipe) {
        const auto both =
            height_within(flow, content.bands, wanted, flow.room() - *recipe - style.space);
        if (both) return *both;
    }
    return height_within(flow, content.bands, wanted, flow.room()).value_or(wanted);
}

void put_with_heads(SheetFlow& flow, std::span<const SheetBand> bands, double height) {
    const double aspect = flow.style().column_width(flow.style().columns) / height;
    put_bands(flow, bands, height, head_share_of(bands, aspect));
}

}  // namespace

Document lay_out(const SheetContent& content, const SheetStyle& style, TextRuler& ruler) {
    SheetFlow flow(content, style, ruler);
    put_header(flow, content.header);
    put_with_heads(flow, content.bands, cell_height(flow, content));
    if (content.recipe) put_recipe(flow, *content.recipe);
    put_with_heads(flow, content.more, wanted_cell_height(content.more, style));
    return flow.finish();
}

}  // namespace quarterturn
