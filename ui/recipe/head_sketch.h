#pragma once

#include <QWidget>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

// What is drawn on the head, to be looked at.
class HeadSketch : public QWidget {
    Q_OBJECT
  public:
    explicit HeadSketch(const HeadDrawing& drawing, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    HeadDrawing drawing_;
};

}  // namespace quarterturn
