#pragma once

#include <QWidget>

#include "indexer/record/people.h"
#include "ui/shell/place.h"
#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_world.h"
#include "ui/wedding_morning/take_along.h"

class QPushButton;

namespace quarterturn {

class FlowLayout;
class WeddingChoice;

// Above the board: which wedding, and what is done with the board as a whole. On the whole screen
// only what is needed there.
class BoardBar : public QWidget {
    Q_OBJECT
  public:
    BoardBar(const BoardWorld& world, const BoardType& type, bool alone, QWidget* parent = nullptr);

    void show_weddings(const std::vector<Wedding>& weddings, WeddingId current);
    // Photos have a light of their own where the board is dim.
    void show_light(bool dim, bool photos_dim);

  signals:
    void wedding_chosen(quarterturn::WeddingId wedding);
    void timer_asked();
    void taken_along(quarterturn::TakenAlong what);
    void dim_asked();
    void photo_light_asked();
    void alone_asked(bool alone);
    void led_to(quarterturn::Moment moment);

  private:
    QPushButton* add(FlowLayout& row, const QString& text);
    void add_weddings(FlowLayout& row);
    void add_ways(FlowLayout& row);
    void add_take_along(FlowLayout& row);

    BoardType type_;
    bool alone_;
    WeddingChoice* weddings_ = nullptr;  // in the window
    QPushButton* photos_ = nullptr;
    QPushButton* dim_ = nullptr;
};

}  // namespace quarterturn
