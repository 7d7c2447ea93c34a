#include "indexer/sheet/phone_pictures.h"

#include <atomic>

#include "indexer/image/encode.h"
#include "indexer/image/shrink.h"
#include "indexer/sheet/box_picture.h"
#include "indexer/sheet/crop.h"
#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

constexpr double phone_aspect = 3.0 / 4;

struct Fineness {
    int height = 0;   // pixels
    int quality = 0;  // as libjpeg counts
};

// The first fills the height of a usual phone at three dots to the pixel of a page; the last can
// still be told apart (chosen by looking).
constexpr std::array finenesses{Fineness{1280, 82}, Fineness{1120, 80}, Fineness{960, 78},
                                Fineness{840, 74},  Fineness{720, 70},  Fineness{600, 66},
                                Fineness{480, 60},  Fineness{360, 52}};
// The demo photos take 0.10 bytes a pixel at the first quality; with fewer than this nothing is
// worth trying, and the memory for it is saved.
constexpr double least_bytes_of_pixel = 0.06;

double aspect_of(const SheetPhoto& photo) {
    const bool known = photo.upright.width > 0 && photo.upright.height > 0;
    return photo.head || !known ? phone_aspect : photo.upright.width / photo.upright.height;
}

PhotoItem item_of(const SheetPhoto& photo, double share) {
    PhotoItem item = photo.item;
    if (photo.head) {
        item.part = part_around_head({photo.upright, *photo.head}, share, phone_aspect);
    }
    return item;
}

double common_share(const std::vector<SheetPhoto>& photos) {
    std::vector<HeadedPhoto> headed;
    for (const SheetPhoto& photo : photos) {
        if (photo.head) headed.push_back({photo.upright, *photo.head});
    }
    return common_head_share(headed, phone_aspect);
}

cv::Size size_at(const SheetPhoto& photo, int height) {
    const double aspect = aspect_of(photo);
    if (aspect <= phone_aspect) return {std::max(1, cvRound(height * aspect)), height};
    const int width = cvRound(height * phone_aspect);
    return {width, std::max(1, cvRound(width / aspect))};
}

// The finest that may fit at all.
std::size_t finest_possible(std::size_t photos, std::size_t most_bytes) {
    for (std::size_t i = 0; i + 1 < finenesses.size(); ++i) {
        const double pixels = finenesses[i].height * finenesses[i].height * phone_aspect;
        const double least = static_cast<double>(photos) * pixels * least_bytes_of_pixel;
        if (least <= static_cast<double>(most_bytes)) return i;
    }
    return finenesses.size() - 1;
}

cv::Mat smaller(const cv::Mat& picture, cv::Size most) {
    if (picture.cols <= most.width || picture.rows < most.height) return picture;
    return shrunk_to(picture, most);
}

}  // namespace

PhonePictures phone_pictures(const std::vector<SheetPhoto>& photos, std::size_t most_bytes,
                             Decoder& decoder, FileSystem& disk) {
    const std::size_t first = finest_possible(photos.size(), most_bytes);
    const double share = common_share(photos);
    std::vector<BoxPicture> decoded(photos.size());
    PhonePictures result{std::vector<PhonePicture>(photos.size()), false};
    const auto decode = [&](std::size_t i) {
        decoded[i] = picture_for(item_of(photos[i], share),
                                 size_at(photos[i], finenesses[first].height), decoder, disk);
        result.pictures[i].problem = decoded[i].problem;
    };
    side_by_side(photos.size(), [&] { return decode; });
    for (std::size_t level = first; level < finenesses.size() && !result.fit; ++level) {
        const Fineness& fineness = finenesses[level];
        const bool coarsest = level + 1 == finenesses.size();
        std::atomic<std::size_t> so_far = 0;
        const auto encode = [&](std::size_t i) {
            if (!decoded[i].problem.empty() || (so_far > most_bytes && !coarsest)) return;
            const cv::Mat picture = smaller(decoded[i].bgr, size_at(photos[i], fineness.height));
            result.pictures[i] = {
                jpeg_bytes(picture, fineness.quality), picture.cols, picture.rows, {}};
            so_far += result.pictures[i].jpeg.size();
        };
        side_by_side(photos.size(), [&] { return encode; });
        result.fit = so_far <= most_bytes;
    }
    return result;
}

}  // namespace quarterturn
