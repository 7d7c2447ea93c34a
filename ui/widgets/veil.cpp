#include "ui/wedding_morning/veil.h"

#include <QPainter>

namespace quarterturn {

QImage veiled(const QImage& picture) {
    if (picture.isNull()) return picture;
    QImage dim = picture.convertToFormat(QImage::Format_RGB32);
    QPainter(&dim).fillRect(dim.rect(), QColor(0, 0, 0, 128));
    return dim;
}

}  // namespace quarterturn
