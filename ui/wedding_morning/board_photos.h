#pragma once

#include <QWidget>
#include <map>
#include <span>

#include "ui/pictures/picture_loader.h"
#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

namespace quarterturn {

class BoardPhoto;

// A look from all angles, as large as there is room, where the camera stood: front at the top, back
// at the bottom, the client's left on the left; further angles smaller. Arrow keys go round.
class BoardPhotos : public QWidget {
    Q_OBJECT
  public:
    BoardPhotos(const PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    void show_look(const BoardLook& look);
    void show_pictures();  // those that have come since
    void veil(bool veiled);
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
    std::vector<BoardPhoto*> those_of(std::span<const Angle> angles) const;
    void lay_out();
    void lay_out(const std::vector<BoardPhoto*>& photos, const QRect& column);
    static QSize size_in(const QSize& room, const BoardPhoto& photo);
    int edge(const BoardPhoto& photo) const;

    const PictureLoader& pictures_;
    BoardType type_;
    std::map<Angle, BoardPhoto*> photos_;
    bool veiled_ = false;
};

}  // namespace quarterturn
