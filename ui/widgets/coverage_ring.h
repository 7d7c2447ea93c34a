#pragma once

#include <QWidget>
#include <array>

#include "indexer/record/words.h"

namespace quarterturn {

// The small ring that stands for a look in lists. Its verdicts are also its accessible name and its
// tool tip. It takes no focus: what it says stands in words beside it.
class CoverageRing : public QWidget {
    Q_OBJECT
  public:
    explicit CoverageRing(int side, QWidget* parent = nullptr);

    void show_ring(const Ring& ring);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Ring ring_{Quarter::missing, Quarter::missing, Quarter::missing, Quarter::missing};
};

}  // namespace quarterturn
