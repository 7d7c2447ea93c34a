#pragma once

#include <QWidget>
#include <array>

#include "indexer/record/photo.h"
#include "ui/two_heads/pair_view.h"
#include "ui/two_heads/point_view.h"

class QBoxLayout;
class QLabel;

namespace quarterturn {

class Notice;

// Both photos of a pair, whole, with the two points of each: for her to set right.
class PointsPanel : public QWidget {
    Q_OBJECT
  public:
    explicit PointsPanel(QWidget* parent = nullptr);

    void show_pair(const PairSide& first, const PairSide& second, Angle angle);
    void show_points(const HeadPoints& first, const HeadPoints& second);
    HeadPoints points(int side) const;
    void say(const QString& problem);

  signals:
    void kept();        // as they stand now
    void found_anew();  // she leaves it to the program
    void left();

  private:
    void add_side(QBoxLayout& row, std::size_t side);

    std::array<PointView*, 2> views_{};
    std::array<QLabel*, 2> captions_{};
    Notice* notice_;
};

}  // namespace quarterturn
