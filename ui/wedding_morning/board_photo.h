#pragma once

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"
#include "ui/widgets/draw_photo.h"
#include "ui/widgets/text_button.h"

namespace quarterturn {

inline constexpr double upright_shape = 0.75;  // width by height of most photos

// One angle on the board: its photo, or an empty frame that says what is missing. Arrow keys are
// left to the part it lies in.
class BoardPhoto : public TextButton {
    Q_OBJECT
  public:
    BoardPhoto(BoardShot shot, const BoardType& type, QWidget* parent);

    const BoardShot& shot() const { return shot_; }
    // Dim where it is veiled.
    void show_picture(const QImage& picture, bool is_veiled);
    const QImage& picture() const { return look_.picture; }
    bool is_veiled() const { return is_veiled_; }

    // Width by height of the photo as it is shown; very wide and very narrow ones are cut.
    double shape() const;
    int caption_height() const;
    QRect picture_box() const;  // in the middle; its caption may be wider

  signals:
    void swiped(int by);  // 1: to the left, on to the next

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    void draw_gap(QPainter& painter) const;
    void draw_caption(QPainter& painter) const;

    BoardShot shot_;
    PhotoLook look_;
    qint64 shown_ = 0;  // QImage::cacheKey() of the picture as it came
    bool is_veiled_ = false;
    QPoint pressed_at_;
};

}  // namespace quarterturn
