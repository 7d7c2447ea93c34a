#pragma once

#include <QWidget>
#include <array>

#include "indexer/record/words.h"

namespace quarterturn {

// The seal as one sees it: the ring of the look inside a doubly drawn edge, like a stamp on paper.
// What it means stands in words beside it.
class SealMark : public QWidget {
    Q_OBJECT
  public:
    explicit SealMark(QWidget* parent = nullptr);

    void show_quarters(const std::array<Coverage, 4>& quarters);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::array<Coverage, 4> quarters_{};
};

}  // namespace quarterturn
