#pragma once

#include "indexer/record/recipe/head_drawing.h"
#include "ui/recipe/field.h"

namespace quarterturn {

class DrawingBoard;

// The head to draw partings, sections and marks on, as a field.
class DrawingField : public Field {
    Q_OBJECT
  public:
    explicit DrawingField(QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(const HeadDrawing& drawing);
    HeadDrawing value() const;

  private:
    DrawingBoard* board_;
};

}  // namespace quarterturn
