#pragma once

#include <QWidget>

#include "ui/wedding_morning/board_photos.h"
#include "ui/wedding_morning/recipe_panel.h"

class QHBoxLayout;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace quarterturn {

class ClientCautions;
class ClientHead;
class EmptyPage;
class LooksRow;

// Which client and which of her looks is on the board.
struct BoardPlace {
    std::size_t client = 0;
    std::size_t look = 0;
};

// The board itself: of one client the name, the photos, what to beware of and the recipe. In a low
// or narrow window all of it scrolls; else the recipe alone.
class Board : public QWidget {
    Q_OBJECT
  public:
    Board(const PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    // What scrolls it in a low window.
    void lie_in(QScrollArea& around);

    // There is such a client; a look where she has any.
    void show_board(const WeddingBoard& board, const BoardPlace& place);
    void show_pictures();
    void veil_photos(bool veiled);
    // The most important first; what is not in view comes once the rest is there.
    std::vector<PictureWish> wishes() const;

    BoardPhotos& photos() const { return *photos_; }
    RecipePanel& recipe() const { return *recipe_; }

  signals:
    void client_chosen(std::size_t client);
    void look_chosen(std::size_t look);
    void look_wanted();         // she has none for this wedding
    void done_said(bool done);  // of a client without steps to tick

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build_side();
    void show_done(const BoardClient& client);
    QSize room() const;
    void share_room();
    void stand_in_columns(bool in_columns);

    const PictureLoader& pictures_;
    BoardType type_;
    BoardPhotos* photos_;
    RecipePanel* recipe_;
    ClientHead* head_;
    ClientCautions* cautions_;
    LooksRow* looks_;
    EmptyPage* no_look_;
    QPushButton* done_;
    QVBoxLayout* all_;
    QHBoxLayout* columns_;  // of photos and recipe; in a narrow window, one below the other
    QVBoxLayout* side_;
    bool in_columns_ = true;
    QScrollArea* around_ = nullptr;
    std::size_t client_ = 0;
    std::vector<Photo> others_;  // of the next client and the one before
};

}  // namespace quarterturn
