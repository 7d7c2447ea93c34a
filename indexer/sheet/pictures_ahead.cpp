#include "indexer/sheet/pictures_ahead.h"

#include "indexer/sheet/box_picture.h"
#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_kept = 96;  // 30 MB

}  // namespace

PicturesAhead::PicturesAhead(std::vector<PhotoItem> photos, Decoder& decoder, FileSystem& disk)
    : photos_(std::move(photos)) {
    if (photos_.size() > most_kept) photos_.resize(most_kept);
    opening_ = std::jthread([this, &decoder, &disk] { open_all(decoder, disk); });
}

void PicturesAhead::open_all(Decoder& decoder, FileSystem& disk) {
    std::vector<cv::Mat> opened(photos_.size());
    const auto open = [&](std::size_t i) {
        const cv::Size pixels = pixels_of(photos_[i].box, print_dpi);
        opened[i] = small_picture_for(photos_[i], pixels, decoder, disk);
    };
    side_by_side(photos_.size(), [&] { return open; });
    for (std::size_t i = 0; i < photos_.size(); ++i) pictures_[photos_[i].small_file] = opened[i];
}

void PicturesAhead::give_to(Document& document) {
    if (opening_.joinable()) opening_.join();
    for (Page& page : document.pages) {
        for (PageItem& item : page.items) {
            auto* const photo = std::get_if<PhotoItem>(&item);
            if (photo == nullptr) continue;
            const auto found = pictures_.find(photo->small_file);
            if (found == pictures_.end() || found->second.empty()) continue;
            photo->picture = found->second;
            photo->small_file.clear();
        }
    }
}

}  // namespace quarterturn
