#include "tests/ui/support/painted_contrast.h"

#include <array>
#include <cmath>
#include <unordered_map>

namespace quarterturn {
namespace {

constexpr int few_pixels = 4;

// WCAG 2.2, definition of relative luminance.
double luminance(QRgb colour) {
    const std::array channels{qRed(colour), qGreen(colour), qBlue(colour)};
    const std::array weights{0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (std::size_t i = 0; i < channels.size(); ++i) {
        const double share = channels[i] / 255.0;
        sum += weights[i] *
               (share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4));
    }
    return sum;
}

double contrast(double one, double other) {
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace

double painted_contrast(const QImage& picture, const QRect& area) {
    const double ratio = picture.devicePixelRatio();
    const QRect pixels = QRectF(QPointF(area.topLeft()) * ratio, QSizeF(area.size()) * ratio)
                             .toAlignedRect()
                             .intersected(picture.rect());
    std::unordered_map<QRgb, int> counts;
    QRgb before = 0;
    int* count = &counts[before];
    for (int y = pixels.top(); y <= pixels.bottom(); ++y) {
        for (int x = pixels.left(); x <= pixels.right(); ++x) {
            const QRgb colour = picture.pixel(x, y);
            if (colour != before) count = &counts[before = colour];
            ++*count;
        }
    }
    const auto ground = std::max_element(counts.begin(), counts.end(),
                                         [](auto& a, auto& b) { return a.second < b.second; });
    if (ground->second == 0) return 21;
    double best = 1;
    for (const auto& [colour, seen] : counts) {
        if (seen < few_pixels) continue;
        best = std::max(best, contrast(luminance(colour), luminance(ground->first)));
    }
    return best;
}

}  // namespace quarterturn
