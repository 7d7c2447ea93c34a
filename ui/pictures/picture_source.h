#pragma once
// Where the window's pictures come from: upright, in sRGB, not yet turned when mirrored.

#include <QImage>
#include <QString>
#include <functional>
#include <memory>

#include "indexer/store/library.h"

namespace cv {
class Mat;
}

namespace quarterturn {

class Decoder;

struct FetchedPicture {
    QImage image;
    QString refused;             // why there is no picture
    bool nothing_opens = false;  // nor will there be one of any photo
};

// Used from one thread only; it waits for disks.
class PictureSource {
  public:
    virtual ~PictureSource() = default;
    virtual FetchedPicture small(const Photo& photo) = 0;  // at least small_long_edge, at once
    // Long edge in pixels at least as asked for; 0: every pixel of the photo.
    virtual FetchedPicture sharp(const Photo& photo, int long_edge) = 0;
};

using PictureSourceMaker = std::function<std::unique_ptr<PictureSource>()>;

inline constexpr int small_long_edge = 512;

// Pictures of the photos in a library folder. `disk` and `decoder` must outlive every source made.
PictureSourceMaker library_pictures(const Path& folder, FileSystem& disk, Decoder& decoder);

// A decoded picture as Qt paints it fastest; null when it was refused.
QImage to_image(const cv::Mat& bgr);

}  // namespace quarterturn
