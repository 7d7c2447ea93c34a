#pragma once

#include <QWidget>
#include <map>

#include "ui/pictures/picture_loader.h"
#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

namespace quarterturn {

class BoardPhoto;

// A look from all angles, as large as there is room, where the camera stood: front at the top, back
// at the bottom, the client's left on the left. Arrow keys go round.
class BoardPhotos : public QWidget {
    Q_OBJECT
  public:
    BoardPhotos(const PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    void show_look(const BoardLook& look);
    void show_pictures();  // those that have come since
    std::vector<PictureWish> wishes() const;
    BoardPhoto* at(Angle angle) const;
    // Beyond it they would not be any larger in that height.
    int fitting_width(int height) const;

    QSize minimumSizeHint() const override;

  signals:
    void enlarged(quarterturn::Angle angle);
    void missing(quarterturn::Angle angle);  // an empty frame was pressed
    void turned(int by);                     // swiped: to the next client or the one before
    void laid_out();                         // at another size

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    bool shows(const std::vector<BoardShot>& shots) const;
    void lay_out();
    void fit(BoardPhoto& photo, const QRect& area);
    int rows() const;
    double row_of(const BoardPhoto& photo) const;  // from 0; may lie between two
    int edge(const BoardPhoto& photo) const;

    const PictureLoader& pictures_;
    BoardType type_;
    std::map<Angle, BoardPhoto*> photos_;
};

}  // namespace quarterturn
