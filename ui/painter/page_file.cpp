#include "ui/painter/page_file.h"

#include <QColorSpace>
#include <future>

#include "indexer/image/strips.h"

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

// What `encode` makes of each strip, which it gets with whether it is the last. There is paper for
// a few of them, used again and again; strips that are all white are painted and encoded once.
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
        std::optional<std::size_t> white;
        std::vector<std::size_t> like_that;
        for (std::size_t i = 0; i < strips_.size(); ++i) {
            const bool is_that =
                i + 1 < strips_.size() && is_white(page_, print_dpi, top(i), rows(i));
            if (is_that && white) {
                like_that.push_back(i);
                continue;
            }
            if (is_that) white = i;
            begin(i);
        }
        for (Desk& desk : desks_) finish(desk);
        for (const std::size_t i : like_that) strips_[i] = strips_[*white];
        return std::move(strips_);
    }

  private:
    struct Desk {
        QImage paper;
        std::size_t strip = 0;
        std::future<Strip> encoding;
    };

    int top(std::size_t strip) const { return static_cast<int>(strip) * strip_rows; }
    int rows(std::size_t strip) const { return std::min(strip_rows, size_.height() - top(strip)); }

    void begin(std::size_t strip) {
        Desk& desk = desks_[next_desk_++ % desks_.size()];
        finish(desk);
        const int painted = rows(strip) + 2 * rows_around;
        if (desk.paper.height() != painted) {
            desk.paper = QImage(size_.width(), painted, QImage::Format_RGB32);
        }
        paint_page_rows(desk.paper, page_, pictures_, texts_, print_dpi, top(strip) - rows_around);
        desk.strip = strip;
        desk.encoding =
            std::async(std::launch::async,
                       [encode = encode_, pixels = strip_on(desk.paper),
                        last = strip + 1 == strips_.size()] { return encode(pixels, last); });
    }

    void finish(Desk& desk) {
        if (desk.encoding.valid()) strips_[desk.strip] = desk.encoding.get();
    }

    const Page& page_;
    const PagePictures& pictures_;
    Encode encode_;
    QSize size_;
    std::vector<Strip> strips_;
    LaidTexts texts_;
    std::array<Desk, 4> desks_;
    std::size_t next_desk_ = 0;
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
