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

CellGrid grid_of(const SheetStyle& style, double height) {
    return {style.columns, height, style.caption_points};
}

// The greatest cell height, up to the wanted one, at which the bands take no more than `room`;
// nothing when the cells would become too small.
std::optional<double> height_within(SheetFlow& flow, std::span<const SheetBand> bands,
                                    double wanted, double room) {
    const auto lines = static_cast<double>(count_lines(bands, flow.style().columns));
    if (lines == 0) return wanted;
    const double captions = height_of_bands(flow, bands, grid_of(flow.style(), 0));
    const double fitting = (room - captions) / lines;
    if (fitting < wanted * most_shrinking) return std::nullopt;
    return std::min(fitting, wanted);
}

double cell_height(SheetFlow& flow, const SheetContent& content) {
    const SheetStyle& style = flow.style();
    const double wanted = wanted_cell_height(content.bands, style.column_width(style.columns));
    const auto recipe = content.recipe ? height_of_recipe(flow, *content.recipe) : 0.0;
    if (recipe) {
        const double room = flow.room() - *recipe - style.space;
        const auto both = height_within(flow, content.bands, wanted, room);
        if (both) return *both;
    }
    return height_within(flow, content.bands, wanted, flow.room()).value_or(wanted);
}

CellGrid frame_grid(const SheetContent& content, const SheetStyle& style) {
    const double width = style.column_width(style.frame_columns);
    return {style.frame_columns, wanted_cell_height(content.more, width), style.frame_points};
}

}  // namespace

Document lay_out(const SheetContent& content, const SheetStyle& style, TextRuler& ruler) {
    SheetFlow flow(content, style, ruler);
    put_header(flow, content.header);
    put_bands(flow, content.bands, grid_of(style, cell_height(flow, content)));
    if (content.recipe) put_recipe(flow, *content.recipe);
    put_bands(flow, content.more, frame_grid(content, style));
    return flow.finish();
}

std::vector<PhotoItem> frames_of(const SheetContent& content, const SheetStyle& style) {
    return photos_in_cells(content.more, style, frame_grid(content, style));
}

}  // namespace quarterturn
