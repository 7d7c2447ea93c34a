#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "indexer/record/photo.h"
#include "ui/round_the_head/photo_pane.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class Session;

// One photo or two side by side, down to the pixels; both are moved and brought nearer together.
class CloserPart : public QWidget {
    Q_OBJECT
  public:
    explicit CloserPart(Session& session, QWidget* parent = nullptr);

    // The first to see whether it is sharp; the others to hold beside it.
    void show_photos(std::vector<Photo> photos, bool side_by_side);

  signals:
    void closed();

  private:
    struct Side {
        QWidget* box;
        PhotoPane* pane;
        QLabel* words;
    };

    QWidget* build_row();
    Side build_side();
    void show_side(const Side& side, const Photo& photo);
    void show_all();
    void show_two(bool two);
    void step(int by);
    void whole_or_pixels();

    Session& session_;
    std::vector<Photo> photos_;
    std::size_t second_ = 1;
    bool two_ = false;
    std::array<Side, 2> sides_{};
    QPushButton* nearness_ = nullptr;
    QPushButton* two_button_ = nullptr;
    std::array<QPushButton*, 2> step_buttons_{};
};

}  // namespace quarterturn
