#include "indexer/sheet/bands.h"

#include "indexer/sheet/place_photo.h"

namespace quarterturn {
namespace {

constexpr double least_ratio = 0.75;
constexpr double greatest_ratio = 4.0 / 3;
constexpr double caption_gap = 1.0;  // mm between a photo and its caption
constexpr double name_gap = 1.0;     // mm between a band's name and its photos
constexpr double time_share = 0.26;  // of the caption's width
constexpr int most_note_lines = 4;

using Line = std::span<const SheetCell>;

std::vector<Line> lines_of(const SheetBand& band, int columns) {
    std::vector<Line> lines;
    Line rest(band.cells);
    while (!rest.empty()) {
        const std::size_t count = std::min(rest.size(), static_cast<std::size_t>(columns));
        lines.push_back(rest.first(count));
        rest = rest.subspan(count);
    }
    return lines;
}

std::vector<const SheetPhoto*> photos_in(std::span<const SheetBand> bands) {
    std::vector<const SheetPhoto*> photos;
    for (const SheetBand& band : bands) {
        for (const SheetCell& cell : band.cells) {
            if (cell.photo) photos.push_back(&*cell.photo);
        }
    }
    return photos;
}

class BandPainter {
  public:
    BandPainter(SheetFlow& flow, const CellGrid& grid, double head_share)
        : flow_(flow),
          style_(flow.style()),
          points_(grid.caption_points),
          cell_{0, 0, style_.column_width(grid.columns), grid.height},
          head_share_(head_share) {}

    double name_height(const SheetBand& band) const {
        if (band.name.empty()) return 0;
        return flow_.line_height(style_.heading_points) + name_gap;
    }

    double line_height(Line line) const {
        double note = 0;
        for (const SheetCell& cell : line) note = std::max(note, note_height(cell));
        return cell_.height + caption_gap + title_height() + note + style_.space;
    }

    void put_name(const SheetBand& band, bool continued) {
        if (band.name.empty()) return;
        const std::string name = band.name + (continued ? ", continued" : "");
        const double height = flow_.line_height(style_.heading_points);
        flow_.put_text(text_item(name, style_.heading_points, true, Tone::accent), style_.left(),
                       flow_.y(), style_.width(), height);
        flow_.down(height + name_gap);
    }

    void put_line(Line line) {
        for (std::size_t i = 0; i < line.size(); ++i) {
            Box box = cell_;
            box.x = style_.left() + static_cast<double>(i) * (cell_.width + style_.gutter);
            box.y = flow_.y();
            put_cell(line[i], box);
        }
        flow_.down(line_height(line));
    }

  private:
    double title_height() const { return flow_.line_height(points_); }

    TextItem note_text(const SheetCell& cell) const {
        return text_item(cell.note, points_, false, Tone::soft);
    }

    double note_height(const SheetCell& cell) const {
        if (cell.note.empty()) return 0;
        return std::min(flow_.height_of(note_text(cell), cell_.width),
                        most_note_lines * title_height());
    }

    void put_cell(const SheetCell& cell, const Box& box) {
        if (cell.photo)
            place_photo(flow_, *cell.photo, box, head_share_);
        else
            flow_.put(FrameItem{box, cell.empty});
        put_caption(cell, box);
    }

    void put_caption(const SheetCell& cell, const Box& box) {
        double y = box.y + box.height + caption_gap;
        const double time_width = cell.time.empty() ? 0 : box.width * time_share;
        flow_.put_text(text_item(cell.title, points_, true), box.x, y, box.width - time_width,
                       title_height());
        if (!cell.time.empty()) {
            TextItem time = text_item(cell.time, points_, false, Tone::soft);
            time.align = Align::right;
            flow_.put_text(time, box.x + box.width - time_width, y, time_width, title_height());
        }
        y += title_height();
        if (!cell.note.empty())
            flow_.put_text(note_text(cell), box.x, y, box.width, note_height(cell));
    }

    SheetFlow& flow_;
    const SheetStyle& style_;
    double points_;
    Box cell_;
    double head_share_;
};

}  // namespace

double wanted_cell_height(std::span<const SheetBand> bands, double width) {
    std::vector<double> ratios;
    for (const SheetPhoto* photo : photos_in(bands)) {
        if (photo->upright.width <= 0) continue;
        const double own = photo->upright.height / photo->upright.width;
        ratios.push_back(photo->head ? greatest_ratio
                                     : std::clamp(own, least_ratio, greatest_ratio));
    }
    if (ratios.empty()) return width * greatest_ratio;
    const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
    std::ranges::nth_element(ratios, middle);
    return width * *middle;
}

double height_of_bands(SheetFlow& flow, std::span<const SheetBand> bands, const CellGrid& grid) {
    const BandPainter painter(flow, grid, 1);
    double height = 0;
    for (const SheetBand& band : bands) {
        height += painter.name_height(band);
        for (const Line line : lines_of(band, grid.columns)) height += painter.line_height(line);
    }
    return height;
}

void put_bands(SheetFlow& flow, std::span<const SheetBand> bands, const CellGrid& grid) {
    const double aspect = flow.style().column_width(grid.columns) / grid.height;
    BandPainter painter(flow, grid, head_share_of(photos_in(bands), aspect));
    for (const SheetBand& band : bands) {
        bool named = false;
        for (const Line line : lines_of(band, grid.columns)) {
            const double name = named ? 0 : painter.name_height(band);
            const bool turn =
                flow.room() < painter.line_height(line) + name && !flow.page_is_fresh();
            if (turn) flow.new_page();
            if (turn || !named) painter.put_name(band, named);
            named = true;
            painter.put_line(line);
        }
    }
}

std::vector<PhotoItem> photos_in_cells(std::span<const SheetBand> bands, const SheetStyle& style,
                                       const CellGrid& grid) {
    const Box cell{0, 0, style.column_width(grid.columns), grid.height};
    const auto photos = photos_in(bands);
    const double head_share = head_share_of(photos, cell.width / cell.height);
    std::vector<PhotoItem> items;
    for (const SheetPhoto* photo : photos) {
        items.push_back(photo_in_cell(*photo, cell, head_share));
    }
    return items;
}

}  // namespace quarterturn
