#pragma once

#include <QWidget>
#include <vector>

#include "ui/two_heads/pair_view.h"

class QLayout;
class QDoubleSpinBox;
class QPushButton;

namespace quarterturn {

// Above the pair: how the two are compared, and how fast they blink.
class ModeRow : public QWidget {
    Q_OBJECT
  public:
    // Offers these ways, in this order; the first stands at first.
    ModeRow(PairView& view, const std::vector<PairMode>& modes, QWidget* parent = nullptr);

    void choose(PairMode mode);

  private:
    void add_mode(QLayout& row, PairMode mode);
    void add_blinking(QLayout& row);
    void show_blinking(bool blinks);

    PairView& view_;
    std::map<PairMode, QPushButton*> modes_;
    QWidget* blinking_;
    QDoubleSpinBox* seconds_;
    QPushButton* stop_;
};

}  // namespace quarterturn
