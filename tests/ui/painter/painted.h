#pragma once
// Pages with one photo or text, painted and looked at again.

#include <QImage>
#include <opencv2/imgcodecs.hpp>

#include "indexer/disk/file_system.h"
#include "tests/support/temporary_folder.h"
#include "ui/painter/paint.h"

namespace quarterturn {

inline constexpr Size small_paper{60, 50};  // mm

inline Document document_of(std::vector<PageItem> items) {
    Document document;
    document.title = "A page";
    document.pages.push_back({small_paper, std::move(items)});
    return document;
}

inline void write_png(const Path& file, const cv::Mat& bgr) {
    if (!cv::imwrite(file.string(), bgr)) throw std::runtime_error("cannot write a test picture");
}

inline cv::Mat plain(cv::Size size, const cv::Scalar& bgr) {
    return cv::Mat(size, CV_8UC3, bgr);
}

// The first page, 300 dots per inch.
inline QImage painted(const Document& document) {
    const TemporaryFolder folder;
    const auto decoder = make_local_decoder();
    write_pictures(document, *decoder, real_file_system(), folder / "page.png");
    return QImage(QString::fromStdString((folder / "page.png").string()));
}

inline QColor colour_at(const QImage& page, double x_mm, double y_mm) {
    const double per_mm = print_dpi / 25.4;
    return page.pixelColor(static_cast<int>(x_mm * per_mm), static_cast<int>(y_mm * per_mm));
}

inline bool has_ink(const QImage& page, const QRect& area) {
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x) {
            if (page.pixelColor(x, y).lightness() < 200) return true;
        }
    }
    return false;
}

inline QRect pixels(const Box& box) {
    const double per_mm = print_dpi / 25.4;
    return QRectF(box.x * per_mm, box.y * per_mm, box.width * per_mm, box.height * per_mm).toRect();
}

}  // namespace quarterturn
