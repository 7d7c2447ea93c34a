#include "ui/wedding_morning/board_photo.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/widgets/photo_words.h"
#include "ui/widgets/veil.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double narrowest = 0.66;
constexpr double widest = 1.1;
constexpr int least_swipe = 80;  // px, and flatter than it is long

bool is_arrow(int key) {
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

}  // namespace

BoardPhoto::BoardPhoto(BoardShot shot, const BoardType& type, QWidget* parent)
    : TextButton({}, parent), shot_(std::move(shot)) {
    setFont(type.font(BoardRole::small));
    if (shot_.photo) look_ = look_of(*shot_.photo);
    look_.caption = shown(shot_.angle);
    look_.caption.front() = look_.caption.front().toUpper();
    //: an angle whose photo was taken in a mirror and is shown the right way round
    if (std::exchange(look_.mirrored, false))
        look_.caption = tr("%1, from a mirror").arg(look_.caption);
    setAccessibleName(shot_.photo ? tr("%1: enlarge").arg(described(look_))
                                  : tr("%1: %2").arg(look_.caption, from_utf8(shot_.empty)));
    setToolTip(accessibleName());
}

void BoardPhoto::show_picture(const QImage& picture, bool is_veiled) {
    if (picture.cacheKey() == shown_ && is_veiled == is_veiled_) return;
    shown_ = picture.cacheKey();
    is_veiled_ = is_veiled;
    const QImage upright = picture.mirrored(shot_.photo && shot_.photo->tags.mirrored, false);
    look_.picture = is_veiled ? veiled(upright) : upright;
    update();
}

double BoardPhoto::shape() const {
    if (!shot_.photo || shot_.photo->file.height <= 0) return upright_shape;
    const FileFacts& file = shot_.photo->file;
    return std::clamp(static_cast<double>(file.width) / file.height, narrowest, widest);
}

int BoardPhoto::caption_height() const {
    return fontMetrics().height() + 4;  // as draw_photo() leaves below the picture
}

void BoardPhoto::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (shot_.photo) {
        PhotoLook picture = look_;
        picture.caption.clear();
        draw_photo(painter, picture_box(), picture, palette(), font());
        draw_caption(painter);
    } else {
        draw_gap(painter);
    }
    if (hasFocus()) draw_focus_ring(painter, picture_box(), palette());
}

QRect BoardPhoto::picture_box() const {
    if (!shot_.photo) return rect();
    const int height = this->height() - caption_height();
    QRect box(0, 0, std::min(width(), qRound(height * shape())), height);
    box.moveLeft((width() - box.width()) / 2);
    return box;
}

// Across the column, which is wider than a small picture.
void BoardPhoto::draw_caption(QPainter& painter) const {
    painter.setFont(font());
    painter.setPen(ink_colour(palette()));
    const QRect words(0, height() - caption_height(), width(), caption_height());
    painter.drawText(
        words, Qt::AlignCenter,
        painter.fontMetrics().elidedText(look_.caption, Qt::ElideRight, words.width()));
}

void BoardPhoto::draw_gap(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(outline_colour(palette()), 2.5, Qt::DashLine));
    painter.setBrush(underMouse() ? wash_colour(palette()) : Qt::transparent);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 8, 8);
    painter.setFont(font());
    painter.setPen(ink_colour(palette()));
    painter.drawText(rect().adjusted(8, 8, -8, -8), Qt::AlignCenter | Qt::TextWordWrap,
                     look_.caption + QLatin1Char('\n') + from_utf8(shot_.empty));
}

void BoardPhoto::mousePressEvent(QMouseEvent* event) {
    pressed_at_ = event->pos();
    TextButton::mousePressEvent(event);
}

void BoardPhoto::mouseReleaseEvent(QMouseEvent* event) {
    const QPoint moved = event->pos() - pressed_at_;
    if (std::abs(moved.x()) < least_swipe || std::abs(moved.y()) * 2 > std::abs(moved.x())) {
        return TextButton::mouseReleaseEvent(event);
    }
    setDown(false);
    emit swiped((moved.x() < 0) == isRightToLeft() ? -1 : 1);
}

void BoardPhoto::keyPressEvent(QKeyEvent* event) {
    if (is_arrow(event->key())) {
        event->ignore();
    } else {
        TextButton::keyPressEvent(event);
    }
}

}  // namespace quarterturn
