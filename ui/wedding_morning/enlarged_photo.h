#pragma once

#include <QWidget>
#include <vector>

#include "indexer/record/photo.h"
#include "ui/wedding_morning/board_type.h"

class QButtonGroup;
class QHBoxLayout;
class QLabel;

namespace quarterturn {

class PictureLoader;

struct ShownPhoto {
    QString words;  // "Left", "Step 3"
    Photo photo;
    std::optional<Angle> angle;  // where an arrow key leads to; without, arrows go along the row
};

// One photo as large as the screen, the right way round. Arrow keys walk round the head.
class EnlargedPhoto : public QWidget {
    Q_OBJECT
  public:
    EnlargedPhoto(PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    void show_photos(std::vector<ShownPhoto> photos, std::size_t first);
    const ShownPhoto* shown_photo() const;
    void veil(bool veiled);

  signals:
    void closed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    void build_buttons();
    void go_to(std::size_t photo);
    void walk(const QKeyEvent& event);
    void want_picture();
    int edge() const;
    QRect picture_area() const;

    PictureLoader& pictures_;
    BoardType type_;
    QHBoxLayout* row_;
    QWidget* foot_;
    QButtonGroup* buttons_;
    std::vector<ShownPhoto> photos_;
    std::size_t current_ = 0;
    bool veiled_ = false;
};

}  // namespace quarterturn
