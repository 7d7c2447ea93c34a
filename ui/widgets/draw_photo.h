#pragma once
// One way to draw a photo in the window, for tiles, the head plan and list delegates alike. A photo
// taken in a mirror is turned the right way round and says so; flaws stand on it in words beside a
// hatched mark, like the hatching of a weak quarter.

#include <QFont>
#include <QImage>
#include <QPalette>
#include <QRect>
#include <QString>
#include <QStringList>

class QPainter;

namespace quarterturn {

struct PhotoLook {
    QImage picture;  // upright, as decoded; null while it is on its way
    bool mirrored = false;
    QStringList flaws;         // words, as shown()
    bool used_anyway = false;  // the stylist took it with a reason, flaws and all
    int others_in_burst = 0;   // frames folded behind this one
    QString caption;           // one line below the picture, cut when too long
    QString asked;             // what is suggested, as a question on the picture
    bool current = false;      // the one that the keys act on
    bool selected = false;
};

// What the caption below a photo takes, in pixels.
int caption_height(const QFont& font);

void draw_photo(QPainter& painter, const QRect& area, const PhotoLook& look,
                const QPalette& palette, const QFont& font);

// The picture alone, filling `area` without being stretched, turned when mirrored.
void draw_picture(QPainter& painter, const QRectF& area, const QImage& picture, bool mirrored);

// The mark before what is not as it should be.
void draw_hatched_mark(QPainter& painter, const QRect& area, const QPalette& palette);

// All of it in words, for those who cannot see it.
QString described(const PhotoLook& look);

}  // namespace quarterturn
