#include "ui/painter/page_file.h"

#include <QColorSpace>
#include <future>
#include <opencv2/imgproc.hpp>

#include "indexer/image/strips.h"

namespace quarterturn {
namespace {

constexpr int jpeg_quality = 92;  // between speed and size, on an A4 sheet of 24 photos

cv::Mat pixels_of(const QImage& rows) {
    return {rows.height(), rows.width(), CV_8UC4, const_cast<uchar*>(rows.constBits()),
            static_cast<std::size_t>(rows.bytesPerLine())};
}

// With a fourth channel, as the paper has: Qt lays those down without converting them.
std::vector<BoxPicture> as_on_paper(std::vector<BoxPicture> pictures) {
    for (BoxPicture& picture : pictures) {
        if (picture.problem.empty()) cv::cvtColor(picture.bgr, picture.bgr, cv::COLOR_BGR2BGRA);
    }
    return pictures;
}

// What `encode` makes of each strip, which it gets with whether it is the last. There is paper for
// a few of them, used again and again.
template <class Encode>
auto encoded_strips(const Page& page, const std::vector<BoxPicture>& pictures, Encode encode) {
    using Strip = decltype(encode(cv::Mat(), true));
    const QSize size = pixels_of_paper(page.size, print_dpi);
    std::array<QImage, 4> paper;
    std::array<std::future<Strip>, paper.size()> begun;
    std::vector<Strip> strips;
    int number = 0;
    const auto next_place = [&] { return static_cast<std::size_t>(number++) % paper.size(); };
    for (int first = 0; first < size.height(); first += strip_rows) {
        const std::size_t place = next_place();
        if (begun[place].valid()) strips.push_back(begun[place].get());
        const int count = std::min(strip_rows, size.height() - first);
        if (paper[place].height() != count) {
            paper[place] = QImage(size.width(), count, QImage::Format_RGB32);
        }
        paint_page_rows(paper[place], page, pictures, print_dpi, first);
        begun[place] = std::async(std::launch::async, [encode, rows = pixels_of(paper[place]),
                                                       last = first + count == size.height()] {
            return encode(rows, last);
        });
    }
    for (std::size_t i = 0; i < begun.size(); ++i) {
        const std::size_t place = next_place();
        if (begun[place].valid()) strips.push_back(begun[place].get());
    }
    return strips;
}

}  // namespace

Bytes page_file(const Page& page, const std::vector<BoxPicture>& pictures, PageFormat format) {
    const QByteArray profile = QColorSpace(QColorSpace::SRgb).iccProfile();
    const PictureTag tag{
        print_dpi,
        std::as_bytes(std::span(profile.constData(), static_cast<std::size_t>(profile.size())))};
    const QSize size = pixels_of_paper(page.size, print_dpi);
    const auto on_paper = as_on_paper(pictures);
    if (format == PageFormat::png) {
        const auto strips = encoded_strips(page, on_paper, png_strip);
        return png_of(strips, {size.width(), size.height()}, tag);
    }
    const auto strips = encoded_strips(page, on_paper, [&](const cv::Mat& rows, bool) {
        return jpeg_strip(rows, jpeg_quality, tag);
    });
    return jpeg_of(strips, size.height());
}

}  // namespace quarterturn
