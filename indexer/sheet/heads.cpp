#include "indexer/sheet/heads.h"

#include "indexer/image/head.h"
#include "indexer/image/one_thread_each.h"
#include "indexer/image/shrink.h"
#include "indexer/sheet/photo_file.h"
#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

// A picture is kept this much larger than its cell, so that a part of it can fill the cell.
constexpr double room_for_cropping = 1.4;
constexpr double cell_ratio = 4.0 / 3;
// About 200 MB on A3.
constexpr std::size_t most_kept = 48;

struct Wanted {
    SheetPhoto* photo = nullptr;
    int long_edge = 0;  // pixels
};

int long_edge_for(double column_width_mm) {
    return cvRound(column_width_mm * cell_ratio / 25.4 * print_dpi * room_for_cropping);
}

void add_photos(std::vector<Wanted>& wanted, std::vector<SheetBand>& bands, int long_edge) {
    for (SheetBand& band : bands) {
        for (SheetCell& cell : band.cells) {
            if (cell.photo) wanted.push_back({&*cell.photo, long_edge});
        }
    }
}

cv::Mat no_larger_than(const cv::Mat& picture, int long_edge) {
    const double scale = static_cast<double>(long_edge) / std::max(picture.cols, picture.rows);
    if (scale >= 1) return picture;
    const auto scaled = [&](int edge) { return std::max(1, cvRound(edge * scale)); };
    return shrunk_to(picture, {scaled(picture.cols), scaled(picture.rows)});
}

// In shares of the picture the right way round.
Part share_of(const cv::Rect& head, const cv::Mat& picture, bool mirrored) {
    Part part;
    part.width = static_cast<double>(head.width) / picture.cols;
    part.height = static_cast<double>(head.height) / picture.rows;
    part.x = static_cast<double>(head.x) / picture.cols;
    part.y = static_cast<double>(head.y) / picture.rows;
    if (mirrored) part.x = 1 - part.x - part.width;
    return part;
}

// One for each worker: the cascades are not to be shared.
class HeadSeeker {
  public:
    HeadSeeker(std::span<const Wanted> wanted, Decoder& decoder, FileSystem& disk)
        : wanted_(wanted), decoder_(decoder), disk_(disk) {}

    void operator()(std::size_t index) {
        SheetPhoto& photo = *wanted_[index].photo;
        const int long_edge = wanted_[index].long_edge;
        const Decoded decoded = decode_file(disk_, decoder_, photo.item.file,
                                            photo.item.orientation, long_edge, photo.item.sha256);
        if (!decoded.ok()) return;
        photo.upright = {static_cast<double>(decoded.full_width),
                         static_cast<double>(decoded.full_height)};
        const cv::Mat picture = no_larger_than(decoded.bgr, long_edge);
        if (photo.of_a_head) seek(photo, picture);
        if (index < most_kept) photo.item.picture = picture;
    }

  private:
    void seek(SheetPhoto& photo, const cv::Mat& picture) {
        const auto head = finder_.head(picture);
        if (head && !head->empty()) photo.head = share_of(*head, picture, photo.item.mirrored);
    }

    std::span<const Wanted> wanted_;
    Decoder& decoder_;
    FileSystem& disk_;
    HeadFinder finder_;
};

}  // namespace

void find_heads(SheetContent& content, const SheetStyle& style, Decoder& decoder,
                FileSystem& disk) {
    const OneThreadEach one_thread_each;
    std::vector<Wanted> wanted;
    add_photos(wanted, content.bands, long_edge_for(style.column_width(style.columns)));
    add_photos(wanted, content.more, long_edge_for(style.column_width(style.frame_columns)));
    side_by_side(
        wanted.size(), [&] { return HeadSeeker(wanted, decoder, disk); }, four_at_once);
}

}  // namespace quarterturn
