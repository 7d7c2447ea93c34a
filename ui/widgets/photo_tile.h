#pragma once

#include <QAbstractButton>
#include <vector>

#include "indexer/record/id.h"
#include "ui/widgets/draw_photo.h"

class QMimeData;

namespace quarterturn {

// A photo that can be clicked, reached by Tab and dragged on to the head plan.
class PhotoTile : public QAbstractButton {
    Q_OBJECT
  public:
    PhotoTile(PhotoId photo, QSize size, QWidget* parent = nullptr);

    PhotoId photo() const { return photo_; }
    void show_look(const PhotoLook& look);
    const PhotoLook& look() const { return look_; }
    QSize sizeHint() const override { return size_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

  private:
    PhotoId photo_;
    QSize size_;
    PhotoLook look_;
    QPoint pressed_at_;
};

// Photos on their way from one place of the window to another.
QMimeData* carry_photos(const std::vector<PhotoId>& photos);
std::vector<PhotoId> carried_photos(const QMimeData& data);

}  // namespace quarterturn
