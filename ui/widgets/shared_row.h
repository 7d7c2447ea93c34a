#pragma once

#include "ui/widgets/reflowing_layout.h"

namespace quarterturn {

// Lays its parts beside each other, each as wide as its share, as long as none gets less than it
// needs; else one below the other, each as wide as there is room.
class SharedRow : public ReflowingLayout {
    Q_OBJECT
  public:
    explicit SharedRow(int gap, QWidget* parent = nullptr) : ReflowingLayout(gap, parent) {}

    // What is added otherwise has a share of one.
    void add(QWidget* part, int share);

    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    QSize sizeHint() const override;

  private:
    // Of those that are seen, in a row so wide; empty where they do not fit into one.
    std::vector<int> widths_in(int width) const;
    int arrange(const QRect& area, bool move) const override;
};

}  // namespace quarterturn
