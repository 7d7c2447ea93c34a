#pragma once

#include <QWidget>

#include "indexer/rules/compared_parts.h"

class QPushButton;
class QVBoxLayout;

namespace quarterturn {

// Two recipes side by side: what changed, part by part and step by step, and folded below it what
// stayed.
class Comparison : public QWidget {
    Q_OBJECT
  public:
    explicit Comparison(QWidget* parent = nullptr);

    // `then` and `now` stand above the sides.
    void show_recipes(const Recipe& was, const QString& then, const Recipe& is, const QString& now);

  private:
    void add_sides(const QString& then, const QString& now);
    void show_fold();

    QVBoxLayout* changed_;
    QPushButton* fold_;
    QWidget* same_;
    QVBoxLayout* same_parts_;
    int stayed_ = 0;
};

}  // namespace quarterturn
