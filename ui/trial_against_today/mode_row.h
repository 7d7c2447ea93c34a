#pragma once

#include <QWidget>
#include <vector>

#include "ui/trial_against_today/pair_view.h"

class QBoxLayout;
class QDoubleSpinBox;
class QPushButton;

namespace quarterturn {

// Above the pair: how the two are compared, and how fast they blink.
class ModeRow : public QWidget {
    Q_OBJECT
  public:
    explicit ModeRow(PairView& view, QWidget* parent = nullptr);

    void choose(PairMode mode);

  private:
    void add_mode(QBoxLayout& row, PairMode mode, const QString& name);
    void add_blinking(QBoxLayout& row);
    void show_blinking(bool blinks);

    PairView& view_;
    std::vector<QPushButton*> modes_;
    QWidget* blinking_;
    QDoubleSpinBox* seconds_;
    QPushButton* stop_;
};

}  // namespace quarterturn
