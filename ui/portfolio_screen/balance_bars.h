#pragma once

#include <QWidget>

#include "indexer/portfolio/candidates.h"

class QLabel;

namespace quarterturn {

// How often each family or kind of hair is shown, as bars with the number in words; what is never
// shown says so.
class BalanceBars : public QWidget {
    Q_OBJECT
  public:
    explicit BalanceBars(const QString& heading, QWidget* parent = nullptr);

    void show_counts(const std::vector<FactCount>& counts);

  private:
    class Bars;

    QLabel* nothing_;
    Bars* bars_;
};

}  // namespace quarterturn
