#include "indexer/sheet/pictures_ahead.h"

#include "indexer/sheet/box_picture.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_kept = 96;  // 30 MB

}  // namespace

PicturesAhead::PicturesAhead(std::vector<PhotoItem> photos, Decoder& decoder, FileSystem& disk) {
    if (photos.size() > most_kept) photos.resize(most_kept);
    for (std::size_t i = 0; i < photos.size(); ++i) places_[photos[i].small_file] = i;
    const std::size_t count = photos.size();
    pictures_ = MadeAhead<cv::Mat>(
        count, [photos = std::move(photos), &decoder, &disk](std::size_t i) {
            return small_picture_for(photos[i], pixels_of(photos[i].box, print_dpi), decoder, disk);
        });
}

void PicturesAhead::give_to(Document& document) const {
    for (Page& page : document.pages) {
        for (PageItem& item : page.items) {
            auto* const photo = std::get_if<PhotoItem>(&item);
            if (photo == nullptr) continue;
            const auto found = places_.find(photo->small_file);
            if (found != places_.end()) photo->ahead = pictures_.promised(found->second);
        }
    }
}

}  // namespace quarterturn
