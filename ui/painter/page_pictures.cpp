#include "ui/painter/page_pictures.h"

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

PagePictures pictures_of(const Page& page, double dpi, Decoder& decoder, FileSystem& disk) {
    const auto photos = photos_of(page);
    return {photos.size(), [photos, dpi, &decoder, &disk](std::size_t i) {
                BoxPicture picture =
                    picture_for(*photos[i], pixels_of(photos[i]->box, dpi), decoder, disk);
                if (picture.problem.empty()) picture.bgr = on_paper(picture.bgr);
                return picture;
            }};
}

std::vector<std::string> problems_of(const Page& page, const PagePictures& pictures) {
    const auto photos = photos_of(page);
    std::vector<std::string> problems;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        const BoxPicture& picture = pictures.at(i);
        if (picture.problem.empty()) continue;
        problems.push_back(photos[i]->file.string() + " is not shown. " + picture.problem);
    }
    return problems;
}

}  // namespace quarterturn
