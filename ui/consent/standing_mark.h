#pragma once

#include <QWidget>

#include "indexer/rules/consent.h"

namespace quarterturn {

// The shape beside the word: a solid round with a tick where she allows it, an open one where she
// was not asked, one with a bar where she said no, one half filled where it does not hold today.
class StandingMark : public QWidget {
    Q_OBJECT
  public:
    explicit StandingMark(QWidget* parent = nullptr);

    void show_standing(Standing standing);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Standing standing_ = Standing::not_asked;
};

}  // namespace quarterturn
