#include "ui/painter/page_file.h"

#include <QColorSpace>
#include <memory>
#include <optional>

#include "indexer/image/strips.h"
#include "indexer/sheet/side_by_side.h"

namespace quarterturn {
namespace {

constexpr int jpeg_quality = 92;  // between speed and size, on an A4 sheet of 24 photos

// Painted above and below a strip and cut off: Qt draws sloping lines a little otherwise where the
// paper ends.
constexpr int rows_around = 4;

cv::Mat strip_on(const QImage& paper) {
    const cv::Mat all(paper.height(), paper.width(), CV_8UC4, const_cast<uchar*>(paper.constBits()),
                      static_cast<std::size_t>(paper.bytesPerLine()));
    return all.rowRange(rows_around, all.rows - rows_around);
}

// What `encode` makes of each strip, which it gets with whether it is the last. Each worker has
// paper for one, used again and again; strips that are all white are painted and encoded once.
template <class Encode>
class Strips {
  public:
    using Strip = std::invoke_result_t<Encode, cv::Mat, bool>;

    Strips(const Page& page, const PagePictures& pictures, Encode encode)
        : page_(page),
          pictures_(pictures),
          encode_(encode),
          size_(pixels_of_paper(page.size, print_dpi)),
          strips_(static_cast<std::size_t>((size_.height() + strip_rows - 1) / strip_rows)) {}

    std::vector<Strip> encoded() && {
        find_white();
        side_by_side(to_paint_.size(), [&] {
            return [this, desk = std::make_shared<Desk>()](std::size_t i) {
                paint_and_encode(to_paint_[i], *desk);
            };
        });
        for (const std::size_t i : like_white_) strips_[i] = strips_[*white_];
        return std::move(strips_);
    }

  private:
    struct Desk {
        QImage paper;
        LaidTexts texts;
    };

    int top(std::size_t strip) const { return static_cast<int>(strip) * strip_rows; }
    int rows(std::size_t strip) const { return std::min(strip_rows, size_.height() - top(strip)); }
    bool is_last(std::size_t strip) const { return strip + 1 == strips_.size(); }

    void find_white() {
        for (std::size_t i = 0; i < strips_.size(); ++i) {
            const bool is_that = !is_last(i) && is_white(page_, print_dpi, top(i), rows(i));
            if (is_that && white_) {
                like_white_.push_back(i);
                continue;
            }
            if (is_that) white_ = i;
            to_paint_.push_back(i);
        }
    }

    void paint_and_encode(std::size_t strip, Desk& desk) {
        const int painted = rows(strip) + 2 * rows_around;
        if (desk.paper.height() != painted) {
            desk.paper = QImage(size_.width(), painted, QImage::Format_RGB32);
        }
        paint_page_rows(desk.paper, page_, pictures_, desk.texts, print_dpi,
                        top(strip) - rows_around);
        strips_[strip] = encode_(strip_on(desk.paper), is_last(strip));
    }

    const Page& page_;
    const PagePictures& pictures_;
    Encode encode_;
    QSize size_;
    std::vector<Strip> strips_;
    std::vector<std::size_t> to_paint_;
    std::vector<std::size_t> like_white_;
    std::optional<std::size_t> white_;
};

}  // namespace

Bytes page_file(const Page& page, const PagePictures& pictures, PageFormat format) {
    const QByteArray profile = QColorSpace(QColorSpace::SRgb).iccProfile();
    const PictureTag tag{
        print_dpi,
        std::as_bytes(std::span(profile.constData(), static_cast<std::size_t>(profile.size())))};
    const QSize size = pixels_of_paper(page.size, print_dpi);
    if (format == PageFormat::png) {
        const auto strips = Strips(page, pictures, png_strip).encoded();
        return png_of(strips, {size.width(), size.height()}, tag);
    }
    const auto strips = Strips(page, pictures, [&](const cv::Mat& rows, bool) {
                            return jpeg_strip(rows, jpeg_quality, tag);
                        }).encoded();
    return jpeg_of(strips, size.height());
}

}  // namespace quarterturn
