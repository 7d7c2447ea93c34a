#include "ui/two_heads/laid_picture.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double cell_corner = 8;

QTransform transform_of(const Similarity& lay) {
    return {lay.along, lay.across, -lay.across, lay.along, lay.x, lay.y};
}

// From pixels of the picture to the widget.
QTransform placed(const QImage& picture, bool mirrored, const Similarity& lay, const Box& window,
                  const QRectF& cell) {
    const double height = picture.height();
    QTransform place;
    if (mirrored) place = QTransform(-1, 0, 0, 1, picture.width(), 0);
    place *= QTransform::fromScale(1 / height, 1 / height);
    place *= transform_of(lay);
    const double scale = cell.height() / window.height;
    place *= QTransform::fromTranslate(-window.x, -window.y);
    place *= QTransform::fromScale(scale, scale);
    return place * QTransform::fromTranslate(cell.x(), cell.y());
}

void clip_to(QPainter& painter, const QRectF& cell, const QPalette& palette) {
    QPainterPath path;
    path.addRoundedRect(cell, cell_corner, cell_corner);
    painter.setClipPath(path, Qt::IntersectClip);
    const bool covers = painter.opacity() == 1;  // what fades lies over another, and not over paper
    if (covers) painter.fillRect(cell, hairline_colour(palette));
}

}  // namespace

QRectF in_the_middle(const QRectF& room, double aspect) {
    const double height = std::min(room.height(), room.width() / aspect);
    const QSizeF size(height * aspect, height);
    return {room.center() - QPointF(size.width() / 2, size.height() / 2), size};
}

void draw_laid(QPainter& painter, const QRectF& cell, const QImage& picture, bool mirrored,
               const Similarity& lay, const Box& window, const QPalette& palette) {
    painter.save();
    clip_to(painter, cell, palette);
    if (!picture.isNull()) {
        painter.setTransform(placed(picture, mirrored, lay, window, cell), true);
        painter.drawImage(QPointF(0, 0), picture);
    }
    painter.restore();
}

void draw_whole(QPainter& painter, const QRectF& cell, const QImage& picture, bool mirrored,
                const QPalette& palette) {
    painter.save();
    clip_to(painter, cell, palette);
    if (!picture.isNull()) {
        const QSizeF size = QSizeF(picture.size()).scaled(cell.size(), Qt::KeepAspectRatio);
        const QPointF corner = cell.center() - QPointF(size.width() / 2, size.height() / 2);
        painter.drawImage(QRectF(corner, size), picture.mirrored(mirrored, false));
    }
    painter.restore();
}

}  // namespace quarterturn
