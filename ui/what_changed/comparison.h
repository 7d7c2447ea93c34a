#pragma once

#include <QWidget>

#include "indexer/looks/recipe_moments.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

// Two recipes side by side: what changed, part by part and step by step, and folded below it what
// stayed.
class Comparison : public QWidget {
    Q_OBJECT
  public:
    explicit Comparison(QWidget* parent = nullptr);

    void show_moments(const RecipeMoment& was, const RecipeMoment& is);

  private:
    void add_sides(const RecipeMoment& was, const RecipeMoment& is);
    void show_fold();

    QVBoxLayout* changed_;
    QPushButton* fold_;
    QWidget* same_;
    QVBoxLayout* same_parts_;
    int stayed_ = 0;
};

}  // namespace quarterturn
