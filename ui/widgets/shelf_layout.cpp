#include "ui/widgets/shelf_layout.h"

#include <algorithm>

namespace quarterturn {

void ShelfLayout::arrange(const ShelfMeasures& measures, const std::vector<int>& photos_on_shelf) {
    measures_ = measures;
    const int room = std::max(measures.width - 2 * measures.margin, 1);
    columns_ = std::max((room + measures.gap) / (measures.least_tile + measures.gap), 1);
    tile_width_ = (room - (columns_ - 1) * measures.gap) / columns_;
    shelves_.clear();
    int first = 0;
    height_ = 0;
    for (const int photos : photos_on_shelf) {
        shelves_.push_back({first, photos, height_});
        first += photos;
        height_ = bottom(shelves_.back());
    }
    height_ += measures.margin;
}

int ShelfLayout::row_height() const {
    return static_cast<int>(tile_width_ * measures_.height_of_width) + measures_.below_tile +
           measures_.gap;
}

int ShelfLayout::rows(const Shelf& shelf) const {
    return (shelf.photos + columns_ - 1) / columns_;
}

int ShelfLayout::bottom(const Shelf& shelf) const {
    return shelf.top + measures_.heading + rows(shelf) * row_height();
}

int ShelfLayout::shelf_of(int position) const {
    const auto after = std::ranges::upper_bound(shelves_, position, {}, &Shelf::first);
    return static_cast<int>(after - shelves_.begin()) - 1;
}

QRect ShelfLayout::tile(int position) const {
    const Shelf& shelf = shelves_[static_cast<std::size_t>(shelf_of(position))];
    const int on_shelf = position - shelf.first;
    return {measures_.margin + on_shelf % columns_ * (tile_width_ + measures_.gap),
            shelf.top + measures_.heading + on_shelf / columns_ * row_height(), tile_width_,
            row_height() - measures_.gap};
}

QRect ShelfLayout::heading(int shelf) const {
    return {measures_.margin, shelves_[static_cast<std::size_t>(shelf)].top,
            measures_.width - 2 * measures_.margin, measures_.heading};
}

int ShelfLayout::first_at_or_below(int y) const {
    const auto found =
        std::ranges::partition_point(shelves_, [&](const Shelf& s) { return bottom(s) <= y; });
    return static_cast<int>(found - shelves_.begin());
}

ShelfLayout::Seen ShelfLayout::seen(int top, int bottom_line) const {
    Seen seen;
    seen.first_shelf = first_at_or_below(top);
    seen.end_shelf = static_cast<int>(
        std::ranges::lower_bound(shelves_, bottom_line, {}, &Shelf::top) - shelves_.begin());
    if (seen.first_shelf >= seen.end_shelf) return {};
    const auto photos_above = [&](const Shelf& shelf, int y, bool whole_rows) {
        const int below_heading =
            y - shelf.top - measures_.heading + (whole_rows ? 0 : row_height() - 1);
        const int rows_above = std::max(below_heading, 0) / row_height();
        return shelf.first + std::min(rows_above * columns_, shelf.photos);
    };
    seen.first_photo =
        photos_above(shelves_[static_cast<std::size_t>(seen.first_shelf)], top, true);
    seen.end_photo =
        photos_above(shelves_[static_cast<std::size_t>(seen.end_shelf) - 1], bottom_line, false);
    seen.end_photo = std::max(seen.end_photo, seen.first_photo);
    return seen;
}

int ShelfLayout::photo_at(QPoint point) const {
    const Seen near = seen(point.y(), point.y() + 1);
    for (int position = near.first_photo; position < near.end_photo; ++position) {
        if (tile(position).contains(point)) return position;
    }
    return -1;
}

int ShelfLayout::above(int position) const {
    const int shelf_index = shelf_of(position);
    const Shelf& shelf = shelves_[static_cast<std::size_t>(shelf_index)];
    if (position - shelf.first >= columns_) return position - columns_;
    if (shelf_index == 0) return position;
    const Shelf& before = shelves_[static_cast<std::size_t>(shelf_index) - 1];
    const int column = (position - shelf.first) % columns_;
    const int last_row = (rows(before) - 1) * columns_;
    return before.first + std::min(last_row + column, before.photos - 1);
}

int ShelfLayout::below(int position) const {
    const int shelf_index = shelf_of(position);
    const Shelf& shelf = shelves_[static_cast<std::size_t>(shelf_index)];
    const int on_shelf = position - shelf.first;
    const int next_row = on_shelf / columns_ + 1;
    if (next_row < rows(shelf)) {
        return shelf.first + std::min(on_shelf + columns_, shelf.photos - 1);
    }
    if (static_cast<std::size_t>(shelf_index) + 1 == shelves_.size()) return position;
    const Shelf& after = shelves_[static_cast<std::size_t>(shelf_index) + 1];
    return after.first + std::min(on_shelf % columns_, after.photos - 1);
}

}  // namespace quarterturn
