#pragma once

#include <QWidget>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

// A drawing on the head to look at; its accessible name tells it in words.
class DrawingView : public QWidget {
    Q_OBJECT
  public:
    explicit DrawingView(const HeadDrawing& drawing, QWidget* parent = nullptr);

    const HeadDrawing& drawing() const { return drawing_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    HeadDrawing drawing_;
};

}  // namespace quarterturn
