#include "ui/painter/line_on_picture.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "ui/painter/picture.h"

namespace quarterturn {
namespace {

constexpr double band_share = 0.055;    // of the shorter edge (common practice)
constexpr double letters_share = 0.55;  // of the band
constexpr double side_share = 0.6;      // of the band, left and right of the words
const QColor band_paper(0xff, 0xfc, 0xf7, 0xe6);
const QColor band_ink(0x2b, 0x23, 0x20);

}  // namespace

void draw_line_on_picture(cv::Mat& bgr, const std::string& words) {
    QImage image = as_image(bgr);
    const double band = std::max(8.0, std::min(bgr.cols, bgr.rows) * band_share);
    const QRectF box(0, bgr.rows - band, bgr.cols, band);
    const QString text = QString::fromStdString(words);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font = painter.font();
    font.setPixelSize(std::max(6, static_cast<int>(band * letters_share)));
    const double room = box.width() - 2 * side_share * band;
    const double wanted = QFontMetricsF(font).horizontalAdvance(text);
    if (wanted > room) {
        font.setPixelSize(std::max(6, static_cast<int>(font.pixelSize() * room / wanted)));
    }
    painter.setFont(font);
    painter.fillRect(box, band_paper);
    painter.setPen(band_ink);
    painter.drawText(box, Qt::AlignCenter | Qt::TextSingleLine, text);
}

}  // namespace quarterturn
