#include "indexer/sheet/photo_cell.h"

#include "indexer/sheet/wording.h"

namespace quarterturn {

SheetCell photo_cell(const Photo& photo, const Path& library_folder) {
    SheetPhoto shown;
    shown.item.file = library_folder / photo.file.path;
    shown.item.orientation = photo.file.orientation;
    shown.item.mirrored = photo.tags.mirrored;
    shown.item.described = described(photo);
    shown.upright = {static_cast<double>(photo.file.width), static_cast<double>(photo.file.height)};
    shown.of_a_head = photo.tags.angle && *photo.tags.angle != Angle::detail;
    SheetCell cell;
    cell.photo = std::move(shown);
    cell.title = photo.tags.angle ? capitalised(word(*photo.tags.angle)) : "Angle not tagged";
    cell.time = time_words(photo);
    cell.note = photo_note(photo);
    return cell;
}

}  // namespace quarterturn
