#include "ui/painter/page_pixels.h"

#include <stdexcept>

#include "ui/painter/paint_page.h"

namespace quarterturn {

cv::Mat page_pixels(const Page& page, Decoder& decoder, FileSystem& disk) {
    const auto pictures = pictures_of(page, print_dpi, decoder, disk);
    const auto problems = problems_of(page, pictures);
    if (!problems.empty()) throw std::runtime_error(problems.front());
    QImage image = page_image(page, pictures, print_dpi).convertToFormat(QImage::Format_BGR888);
    return cv::Mat(image.height(), image.width(), CV_8UC3, image.bits(),
                   static_cast<std::size_t>(image.bytesPerLine()))
        .clone();
}

}  // namespace quarterturn
