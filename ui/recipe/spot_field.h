#pragma once

#include <optional>

#include "indexer/record/recipe/head_drawing.h"
#include "ui/recipe/field.h"

namespace quarterturn {

// Where something sits on the head seen from above: a click or the arrow keys put it there, Delete
// takes it away. Left stays left, also where text runs from right to left.
class SpotField : public Field {
    Q_OBJECT
  public:
    explicit SpotField(QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(std::optional<PlanPoint> spot);
    std::optional<PlanPoint> value() const { return spot_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void put(std::optional<PlanPoint> spot);
    void tell();

    std::optional<PlanPoint> spot_;
    QString name_;
};

}  // namespace quarterturn
