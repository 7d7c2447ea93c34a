#include "ui/pairs/laid_frame.h"

#include <QKeyEvent>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/two_heads/laid_picture.h"

namespace quarterturn {
namespace {

constexpr int frame_height_steps = 34;

}  // namespace

void FramePicture::draw(QPainter& painter, const QRectF& cell, const QPalette& palette) const {
    if (lay) {
        draw_laid(painter, cell, picture, mirrored, *lay, window, palette);
    } else {
        draw_whole(painter, cell, picture, mirrored, palette);
    }
}

void LaidFrame::show_frame(const FramePicture& frame) {
    frame_ = frame;
    update();
}

void LaidFrame::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    frame_.draw(painter, in_the_middle(rect()), palette());
}

FrameButton::FrameButton(const QString& day, const QString& word, QWidget* parent)
    : TextButton(day, parent), word_(word) {
    setCheckable(true);
    setFont(text_font(TextRole::small));
    setAccessibleName(word.isEmpty() ? day : tr("%1, %2").arg(day, word));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void FrameButton::show_frame(const FramePicture& frame, bool current) {
    frame_ = frame;
    current_ = current;
    setChecked(current);
    update();
}

QSize FrameButton::sizeHint() const {
    const int height = space(frame_height_steps);
    const int words =
        std::max(fontMetrics().horizontalAdvance(text()), fontMetrics().horizontalAdvance(word_));
    return {std::max(qRound(height * head_aspect), words + space(2)),
            height + 2 * fontMetrics().height() + space(2)};
}

void FrameButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) return event->ignore();
    TextButton::keyPressEvent(event);
}

void FrameButton::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const double room = space(frame_height_steps) - 8;
    const QRectF cell = in_the_middle({4, 4, width() - 8.0, room});
    frame_.draw(painter, cell, palette());
    if (current_) {
        painter.setPen(QPen(accent_colour(palette()), 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(cell.adjusted(-2.5, -2.5, 2.5, 2.5), 10, 10);
    }
    QFont font = this->font();
    font.setBold(current_);
    painter.setFont(font);
    const int line = fontMetrics().height();
    const QRect words(0, height() - 2 * line - 2, width(), line);
    painter.setPen(ink_colour(palette()));
    painter.drawText(words, Qt::AlignCenter, text());
    painter.setFont(this->font());
    painter.setPen(quiet_colour(palette()));
    painter.drawText(words.translated(0, line), Qt::AlignCenter, word_);
    if (hasFocus()) draw_focus_ring(painter, rect(), palette());
}

}  // namespace quarterturn
