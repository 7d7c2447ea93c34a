#pragma once

#include <QWidget>

#include "ui/wedding_morning/board_photos.h"
#include "ui/wedding_morning/recipe_panel.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class ClientHead;
class ClientStrip;
class EmptyPage;

// Which client and which of her looks is on the board.
struct BoardPlace {
    std::size_t client = 0;
    std::size_t look = 0;
};

// The board itself: the clients, and of one of them the photos, what to beware of and the recipe.
class Board : public QWidget {
    Q_OBJECT
  public:
    Board(const PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    // There is such a client; a look where she has any.
    void show_board(const WeddingBoard& board, const BoardPlace& place);
    void show_pictures();
    // The most important first; what is not in view comes once the rest is there.
    std::vector<PictureWish> wishes() const;

    BoardPhotos& photos() const { return *photos_; }
    RecipePanel& recipe() const { return *recipe_; }

  signals:
    void client_chosen(std::size_t client);
    void look_chosen(std::size_t look);
    void look_wanted();  // she has none for this wedding

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* build_side();
    QLayout* build_turning();
    void show_turning(const WeddingBoard& board);
    void share_room();

    const PictureLoader& pictures_;
    BoardType type_;
    ClientStrip* strip_;
    BoardPhotos* photos_;
    RecipePanel* recipe_;
    ClientHead* head_;
    EmptyPage* no_look_;
    QPushButton* previous_;
    QPushButton* next_;
    std::size_t client_ = 0;
    std::vector<Photo> others_;  // of the next client and the one before
};

}  // namespace quarterturn
