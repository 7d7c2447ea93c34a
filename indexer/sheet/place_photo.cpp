#include "indexer/sheet/place_photo.h"

#include "indexer/sheet/crop.h"

namespace quarterturn {

double head_share_of(std::span<const SheetPhoto* const> photos, double aspect) {
    std::vector<HeadedPhoto> headed;
    for (const SheetPhoto* photo : photos) {
        if (photo->head && photo->upright.width > 0) {
            headed.push_back({photo->upright, *photo->head});
        }
    }
    return common_head_share(headed, aspect);
}

void place_photo(SheetFlow& flow, const SheetPhoto& photo, const Box& box, double head_share) {
    PhotoItem item = photo.item;
    const double aspect = box.width / box.height;
    const bool known = photo.upright.width > 0 && photo.upright.height > 0;
    if (known && photo.head) {
        item.box = box;
        item.part = part_around_head({photo.upright, *photo.head}, head_share, aspect);
    } else {
        item.box = known ? whole_in_cell(photo.upright, box) : box;
        flow.put(PanelItem{box});
    }
    flow.put(std::move(item));
}

}  // namespace quarterturn
