#include "ui/widgets/veil.h"

#include <QPainter>

#include "ui/theme/theme.h"

namespace quarterturn {

QImage veiled(const QImage& picture) {
    if (picture.isNull()) return picture;
    QImage dim = picture.convertToFormat(QImage::Format_RGB32);
    QPainter(&dim).fillRect(dim.rect(), QColor(0, 0, 0, 128));
    return dim;
}

QImage lit_for_mood(const QImage& picture) {
    return remembered_theme().mood == Mood::dawn ? veiled(picture) : picture;
}

}  // namespace quarterturn
