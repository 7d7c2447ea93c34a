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

    void show_ring(const Ring& ring);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Ring ring_{};
};

}  // namespace quarterturn
