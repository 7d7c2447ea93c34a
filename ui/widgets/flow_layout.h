#pragma once

#include "ui/widgets/reflowing_layout.h"

namespace quarterturn {

// Lays its widgets out like words: along the reading direction, then on to the next row.
class FlowLayout : public ReflowingLayout {
    Q_OBJECT
  public:
    explicit FlowLayout(int gap, QWidget* parent = nullptr) : ReflowingLayout(gap, parent) {}

    Qt::Orientations expandingDirections() const override { return {}; }
    QSize sizeHint() const override;

  private:
    int arrange(const QRect& area, bool move) const override;
};

}  // namespace quarterturn
