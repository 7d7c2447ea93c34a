#include "indexer/sheet/place_photo.h"

#include "indexer/sheet/crop.h"

namespace quarterturn {
namespace {

bool is_known(const Size& upright) {
    return upright.width > 0 && upright.height > 0;
}

// The whole of other photos is shown.
bool fills_cell(const SheetPhoto& photo) {
    return is_known(photo.upright) && photo.head;
}

}  // namespace

double head_share_of(std::span<const SheetPhoto* const> photos, double aspect) {
    std::vector<HeadedPhoto> headed;
    for (const SheetPhoto* photo : photos) {
        if (photo->head && photo->upright.width > 0) {
            headed.push_back({photo->upright, *photo->head});
        }
    }
    return common_head_share(headed, aspect);
}

PhotoItem photo_in_cell(const SheetPhoto& photo, const Box& cell, double head_share) {
    PhotoItem item = photo.item;
    if (fills_cell(photo)) {
        item.box = cell;
        item.part =
            part_around_head({photo.upright, *photo.head}, head_share, cell.width / cell.height);
    } else {
        item.box = is_known(photo.upright) ? whole_in_cell(photo.upright, cell) : cell;
    }
    return item;
}

void place_photo(SheetFlow& flow, const SheetPhoto& photo, const Box& cell, double head_share) {
    if (!fills_cell(photo)) flow.put(PanelItem{cell});
    flow.put(photo_in_cell(photo, cell, head_share));
}

}  // namespace quarterturn
