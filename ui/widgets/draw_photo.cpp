#include "ui/widgets/draw_photo.h"

#include <QCoreApplication>
#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>

#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr double corner = 8;

QString said(const char* text) {
    return QCoreApplication::translate("photo", text);
}

// The strips of words that lie on the picture's foot, from the bottom up.
struct Strip {
    QString text;
    bool hatched = false;  // a flaw
};

QList<Strip> strips_of(const PhotoLook& look) {
    QList<Strip> strips;
    if (!look.flaws.isEmpty()) {
        const QString flaws = look.flaws.join(QStringLiteral(", "));
        //: flaws that the stylist accepted, as in "out of focus, used anyway"
        strips << Strip{look.used_anyway
                            ? QCoreApplication::translate("photo", "%1, used anyway").arg(flaws)
                            : flaws,
                        true};
    }
    if (look.mirrored) strips << Strip{said(QT_TRANSLATE_NOOP("photo", "mirrored, turned")), false};
    if (look.others_in_burst > 0) {
        strips << Strip{
            QCoreApplication::translate("photo", "%n more like it", nullptr, look.others_in_burst),
            false};
    }
    return strips;
}

void draw_strip(QPainter& painter, const QRect& area, const Strip& strip, const QPalette& palette) {
    painter.fillRect(area, card_colour(palette));
    QRect words = area.adjusted(6, 0, -4, 0);
    if (strip.hatched) {
        draw_hatched_mark(painter, {area.left() + 4, area.top() + 4, 14, area.height() - 8},
                          palette);
        words.setLeft(area.left() + 24);
    }
    painter.setPen(ink_colour(palette));
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeading,
                     painter.fontMetrics().elidedText(strip.text, Qt::ElideRight, words.width()));
}

void draw_strips(QPainter& painter, const QRect& picture, const PhotoLook& look,
                 const QPalette& palette) {
    const int height = painter.fontMetrics().height() + 4;
    int bottom = picture.bottom() + 1;
    for (const Strip& strip : strips_of(look)) {
        bottom -= height;
        draw_strip(painter, {picture.left(), bottom, picture.width(), height}, strip, palette);
    }
}

void draw_asked(QPainter& painter, const QRect& picture, const QString& asked,
                const QPalette& palette) {
    if (asked.isEmpty()) return;
    const QFontMetrics metrics = painter.fontMetrics();
    const int width = std::min(metrics.horizontalAdvance(asked) + 16, picture.width());
    const QRect area(picture.left(), picture.top(), width, metrics.height() + 6);
    painter.fillRect(area, accent_colour(palette));
    painter.setPen(on_accent_colour(palette));
    painter.drawText(area, Qt::AlignCenter, metrics.elidedText(asked, Qt::ElideRight, width - 8));
}

void draw_frame(QPainter& painter, const QRect& picture, const PhotoLook& look,
                const QPalette& palette) {
    painter.setBrush(Qt::NoBrush);
    if (look.current) {
        painter.setPen(QPen(accent_colour(palette), 4));
        painter.drawRoundedRect(QRectF(picture).adjusted(2, 2, -2, -2), corner, corner);
    } else if (look.selected) {
        painter.setPen(QPen(accent_colour(palette), 3, Qt::DashLine));
        painter.drawRoundedRect(QRectF(picture).adjusted(2, 2, -2, -2), corner, corner);
    } else {
        painter.setPen(QPen(hairline_colour(palette), 1));
        painter.drawRoundedRect(QRectF(picture).adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
    }
}

}  // namespace

void draw_hatched_mark(QPainter& painter, const QRect& area, const QPalette& palette) {
    painter.save();
    painter.setClipRect(area);
    painter.setPen(QPen(accent_colour(palette), 2));
    for (int x = area.left() - area.height(); x < area.right(); x += 5) {
        painter.drawLine(x, area.bottom(), x + area.height(), area.top());
    }
    painter.restore();
}

void draw_picture(QPainter& painter, const QRectF& area, const QImage& picture, bool mirrored) {
    if (picture.isNull() || area.isEmpty()) return;
    const double scale = std::max(area.width() / picture.width(), area.height() / picture.height());
    QRectF part(0, 0, area.width() / scale, area.height() / scale);
    part.moveCenter(QRectF(picture.rect()).center());
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    if (mirrored) {
        painter.translate(2 * area.center().x(), 0);
        painter.scale(-1, 1);
    }
    painter.drawImage(area, picture, part);
    painter.restore();
}

int caption_height(const QFont& font) {
    return QFontMetrics(font).height() + 4;
}

void draw_photo(QPainter& painter, const QRect& area, const PhotoLook& look,
                const QPalette& palette, const QFont& font) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    const int below = look.caption.isEmpty() ? 0 : caption_height(font);
    const QRect picture = area.adjusted(0, 0, 0, -below);

    QPainterPath rounded;
    rounded.addRoundedRect(picture, corner, corner);
    painter.save();
    painter.setClipPath(rounded, Qt::IntersectClip);
    painter.fillRect(picture, hairline_colour(palette));
    draw_picture(painter, picture, look.picture, look.mirrored);
    draw_strips(painter, picture, look, palette);
    draw_asked(painter, picture, look.asked, palette);
    painter.restore();
    draw_frame(painter, picture, look, palette);

    if (below > 0) {
        const QRect words(area.left(), picture.bottom() + 1, area.width(), below);
        painter.setPen(ink_colour(palette));
        painter.setLayoutDirection(Qt::LayoutDirectionAuto);  // a name runs its own way
        painter.drawText(
            words, Qt::AlignCenter,
            painter.fontMetrics().elidedText(look.caption, Qt::ElideMiddle, words.width()));
    }
    painter.restore();
}

QString described(const PhotoLook& look) {
    QStringList parts;
    if (!look.caption.isEmpty()) parts << look.caption;
    if (!look.asked.isEmpty()) parts << look.asked;
    for (const Strip& strip : strips_of(look)) parts << strip.text;
    return parts.join(QStringLiteral(", "));
}

}  // namespace quarterturn
