#include "ui/painter/page_pictures.h"

#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

std::vector<const PhotoItem*> photos_of(const Page& page) {
    std::vector<const PhotoItem*> photos;
    for (const PageItem& item : page.items) {
        if (const auto* photo = std::get_if<PhotoItem>(&item)) photos.push_back(photo);
    }
    return photos;
}

}  // namespace

std::vector<BoxPicture> pictures_of(const Page& page, double dpi, Decoder& decoder,
                                    FileSystem& disk) {
    const auto photos = photos_of(page);
    std::vector<BoxPicture> pictures(photos.size());
    const auto prepare = [&](std::size_t i) {
        pictures[i] = picture_for(*photos[i], pixels_of(photos[i]->box, dpi), decoder, disk);
        if (pictures[i].problem.empty()) pictures[i].bgr = on_paper(pictures[i].bgr);
    };
    side_by_side(photos.size(), [&] { return prepare; });
    return pictures;
}

std::vector<std::string> problems_of(const Page& page, const std::vector<BoxPicture>& pictures) {
    const auto photos = photos_of(page);
    std::vector<std::string> problems;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        if (pictures[i].problem.empty()) continue;
        problems.push_back(photos[i]->file.string() + " is not shown. " + pictures[i].problem);
    }
    return problems;
}

}  // namespace quarterturn
