#include "indexer/sheet/photo_cell.h"

#include "indexer/sheet/join.h"
#include "indexer/sheet/wording.h"
#include "indexer/store/small_picture.h"

namespace quarterturn {

SheetCell photo_cell(const Photo& photo, const Path& library_folder) {
    SheetPhoto shown;
    shown.id = photo.id;
    shown.item.file = library_folder / photo.file.path;
    shown.item.sha256 = photo.file.sha256;
    shown.item.orientation = photo.file.orientation;
    shown.item.mirrored = photo.tags.mirrored;
    shown.item.described = described(photo);
    shown.upright = {static_cast<double>(photo.file.width), static_cast<double>(photo.file.height)};
    shown.of_a_head = photo.tags.angle && *photo.tags.angle != Angle::detail;
    SheetCell cell;
    cell.photo = std::move(shown);
    cell.title = photo.tags.angle ? capitalised(word(*photo.tags.angle)) : "Angle not tagged";
    if (photo.moment) cell.time = clock_text(*photo.moment);
    cell.note = photo_note(photo);
    return cell;
}

SheetCell frame_cell(const Photo& photo, const Path& library_folder) {
    SheetCell cell = photo_cell(photo, library_folder);
    cell.photo->item.small_file = small_picture_file(library_folder, photo.file.sha256);
    std::string note = std::exchange(cell.time, {});
    add_part(note, " · ", photo.tags.stage ? word(*photo.tags.stage) : "no stage yet");
    add_part(note, "\n", photo.file.name);
    add_part(note, "\n", cell.note);
    cell.note = note;
    return cell;
}

}  // namespace quarterturn
