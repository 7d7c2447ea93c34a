#include "indexer/sheet/contact_content.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

std::string count_words(std::size_t count) {
    if (count == 0) return "No photos yet";
    return count == 1 ? "1 photo" : std::to_string(count) + " photos, in the order of time";
}

}  // namespace

SheetContent sitting_content(const SittingState& state, const Path& library_folder) {
    SheetContent content;
    const std::string hours = sitting_words(state.sitting);
    content.title = hours + ", " + state.client.name;
    content.header.client = state.client.name;
    content.header.lines = {hours};
    if (state.wedding) {
        std::ranges::copy(wedding_words(state.wedding), std::back_inserter(content.header.lines));
    }
    content.header.state = count_words(state.photos.size());
    content.header.again = state.client.name + " · " + hours;
    SheetBand frames;
    for (const Photo& photo : state.photos) {
        frames.cells.push_back(frame_cell(photo, library_folder));
    }
    content.more.push_back(std::move(frames));
    return content;
}

}  // namespace quarterturn
