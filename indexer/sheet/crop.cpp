#include "indexer/sheet/crop.h"

namespace quarterturn {
namespace {

constexpr double least_share = 0.56;
constexpr double greatest_share = 0.78;
constexpr double widest_head = 0.94;  // of the cell's width
constexpr double head_centre = 0.42;  // of the cell's height, from the top: long hair hangs below
constexpr double least_air_above = 0.05;
// A head with its hair is at least this much higher than wide: where an outline ends above a bun or
// a chin, the bun and the chin are shown all the same (chosen by measurement on the demo photos).
constexpr double least_height_of_width = 1.2;

double head_width(const HeadedPhoto& photo) {
    return photo.head.width * photo.upright.width;
}

double head_height(const HeadedPhoto& photo) {
    return std::max(photo.head.height * photo.upright.height,
                    head_width(photo) * least_height_of_width);
}

// The height of the largest window of the cell's proportions that the picture holds.
double largest_window(const Size& upright, double aspect) {
    return std::min(upright.height, upright.width / aspect);
}

}  // namespace

double common_head_share(std::span<const HeadedPhoto> photos, double aspect) {
    double share = least_share;
    for (const HeadedPhoto& photo : photos) {
        share = std::max(share, head_height(photo) / largest_window(photo.upright, aspect));
    }
    return std::min(share, greatest_share);
}

Part part_around_head(const HeadedPhoto& photo, double share, double aspect) {
    const double for_width = head_width(photo) / (widest_head * aspect);
    const double window = std::min(std::max(head_height(photo) / share, for_width),
                                   largest_window(photo.upright, aspect));
    Part part;
    part.height = window / photo.upright.height;
    part.width = window * aspect / photo.upright.width;
    const double middle_x = photo.head.x + photo.head.width / 2;
    const double middle_y = photo.head.y + head_height(photo) / photo.upright.height / 2;
    part.x = std::clamp(middle_x - part.width / 2, 0.0, std::max(0.0, 1 - part.width));
    const double centred = middle_y - part.height * head_centre;
    const double with_air = photo.head.y - part.height * least_air_above;
    part.y = std::clamp(std::min(centred, with_air), 0.0, std::max(0.0, 1 - part.height));
    return part;
}

Box whole_in_cell(const Size& upright, const Box& cell) {
    const double scale = std::min(cell.width / std::max(upright.width, 1.0),
                                  cell.height / std::max(upright.height, 1.0));
    const Size size{upright.width * scale, upright.height * scale};
    return {cell.x + (cell.width - size.width) / 2, cell.y + (cell.height - size.height) / 2,
            size.width, size.height};
}

}  // namespace quarterturn
