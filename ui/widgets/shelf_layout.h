#pragma once
// Where each tile of a long page stands: photos or pairs in shelves, each under a heading, in as
// many columns as there is room for. Device-independent pixels, from the top of the page.

#include <QRect>
#include <vector>

namespace quarterturn {

struct ShelfMeasures {
    int width = 0;  // of the page
    int margin = 0;
    int least_tile = 1;  // a tile is at least as wide, unless the page is narrower
    int gap = 0;
    int heading = 0;                // height of a heading
    int below_tile = 0;             // height of the words below a picture
    double height_of_width = 1.25;  // of a picture: most photos of hair are upright
};

class ShelfLayout {
  public:
    void arrange(const ShelfMeasures& measures, const std::vector<int>& photos_on_shelf);

    int height() const { return height_; }
    QRect tile(int position) const;  // with the words below
    QRect heading(int shelf) const;
    int shelf_of(int position) const;

    // Half open: the photos and shelves that touch these lines of the page.
    struct Seen {
        int first_shelf = 0;
        int end_shelf = 0;
        int first_photo = 0;
        int end_photo = 0;
    };
    Seen seen(int top, int bottom) const;
    int photo_at(QPoint point) const;  // -1: none there

    // The photo above or below in the same column, on another shelf too; itself where there is
    // none.
    int above(int position) const;
    int below(int position) const;

  private:
    struct Shelf {
        int first = 0;
        int photos = 0;
        int top = 0;
    };
    int row_height() const;
    int rows(const Shelf& shelf) const;
    int bottom(const Shelf& shelf) const;
    int first_at_or_below(int y) const;  // a shelf

    ShelfMeasures measures_;
    std::vector<Shelf> shelves_;
    int columns_ = 1;
    int tile_width_ = 1;
    int height_ = 0;
};

}  // namespace quarterturn
