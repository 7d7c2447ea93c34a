#include "ui/painter/page_file.h"

#include <gtest/gtest.h>

#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

// A photo, lines of writing, rules and frames all over it, so that strips end within each of them.
Page full_page(std::vector<BoxPicture>& pictures) {
    Page page{{210, 297}, {}};
    for (int line = 0; line < 95; ++line) {
        const double y = 3.07 * line;
        TextItem text;
        text.text = "Pin 4, crossed and away from the face: Ångström, y, j, Ö";
        text.box = {10, y, 120, 6};
        page.items.push_back(text);
        page.items.push_back(RuleItem{.x1 = 140, .y1 = y, .x2 = 200, .y2 = y + 2});
    }
    page.items.push_back(FrameItem{{140, 20, 60, 200}, "No photo yet"});
    PhotoItem photo;
    photo.box = {20, 100, 40, 120};
    photo.file = "a photo";
    page.items.push_back(photo);
    BoxPicture picture;
    picture.bgr = cv::Mat(1417, 472, CV_8UC3);
    cv::randu(picture.bgr, 0, 255);
    pictures.push_back(picture);
    return page;
}

QImage read(const Bytes& file) {
    return QImage::fromData(reinterpret_cast<const uchar*>(file.data()),
                            static_cast<int>(file.size()))
        .convertToFormat(QImage::Format_RGB32);
}

int largest_difference(const QImage& one, const QImage& other) {
    int largest = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            const QRgb a = one.pixel(x, y);
            const QRgb b = other.pixel(x, y);
            largest = std::max({largest, std::abs(qRed(a) - qRed(b)),
                                std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))});
        }
    }
    return largest;
}

TEST(PageFile, InStripsIsThePagePaintedInOnePiece) {
    std::vector<BoxPicture> drawn;
    const Page page = full_page(drawn);
    const PagePictures pictures(drawn);
    const QImage whole =
        page_image(page, pictures, print_dpi).convertToFormat(QImage::Format_RGB32);
    const QImage in_strips = read(page_file(page, pictures, PageFormat::png));
    ASSERT_EQ(in_strips.size(), whole.size());
    EXPECT_LE(largest_difference(in_strips, whole), 1);  // of 255, at the edge of a dash
    const QImage as_jpeg = read(page_file(page, pictures, PageFormat::jpeg));
    ASSERT_EQ(as_jpeg.size(), whole.size());
    // Below all photos, and above the paper's end: where a strip put together wrongly would show.
    EXPECT_LE(largest_difference(as_jpeg.copy(0, 2700, 100, 800), whole.copy(0, 2700, 100, 800)),
              8);
}

}  // namespace
}  // namespace quarterturn
