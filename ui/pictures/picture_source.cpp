#include "ui/pictures/picture_source.h"

#include <opencv2/imgproc.hpp>

#include "indexer/intake/thumbnails.h"

namespace quarterturn {
namespace {

static_assert(small_long_edge == thumbnail_long_edge);

// A photo larger than this is not read to be shown.
constexpr std::int64_t most_bytes = std::int64_t{1} << 30;

FetchedPicture picture_of(const Decoded& decoded) {
    if (!decoded.ok()) {
        return {{}, QString::fromStdString(decoded.refused), decoded.nothing_opens};
    }
    return {to_image(decoded.bgr), {}};
}

class LibraryPictures final : public PictureSource {
  public:
    LibraryPictures(const Path& folder, FileSystem& disk, Decoder& decoder)
        : library_(Library::open_again(folder, disk)), decoder_(decoder) {}

    FetchedPicture small(const Photo& photo) override {
        return picture_of(thumbnail(library_, decoder_, photo));
    }

    FetchedPicture sharp(const Photo& photo, int long_edge) override {
        const Bytes bytes = library_.disk().read(library_.photo_file(photo), most_bytes);
        return picture_of(decoder_.decode(
            {.bytes = bytes, .orientation = photo.file.orientation, .long_edge = long_edge}));
    }

  private:
    Library library_;
    Decoder& decoder_;
};

}  // namespace

PictureSourceMaker library_pictures(const Path& folder, FileSystem& disk, Decoder& decoder) {
    return [folder, &disk, &decoder] {
        return std::make_unique<LibraryPictures>(folder, disk, decoder);
    };
}

QImage to_image(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    QImage image(bgr.cols, bgr.rows, QImage::Format_RGB32);
    cv::Mat pixels(image.height(), image.width(), CV_8UC4, image.bits(),
                   static_cast<std::size_t>(image.bytesPerLine()));
    cv::cvtColor(bgr, pixels, cv::COLOR_BGR2BGRA);
    return image;
}

}  // namespace quarterturn
