#include "indexer/sheet/pictures_ahead.h"

#include "indexer/sheet/photo_file.h"
#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_kept = 48;  // 30 MB

}  // namespace

PicturesAhead::PicturesAhead(std::vector<Path> small_files, Decoder& decoder, FileSystem& disk)
    : files_(std::move(small_files)) {
    if (files_.size() > most_kept) files_.resize(most_kept);
    opening_ = std::jthread([this, &decoder, &disk] { open_all(decoder, disk); });
}

void PicturesAhead::open_all(Decoder& decoder, FileSystem& disk) {
    std::vector<cv::Mat> opened(files_.size());
    const auto open = [&](std::size_t i) {
        opened[i] = decode_file(disk, decoder, files_[i], 1, 0).bgr;
    };
    side_by_side(files_.size(), [&] { return open; });
    for (std::size_t i = 0; i < files_.size(); ++i) pictures_[files_[i]] = opened[i];
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
