#pragma once

#include <QWidget>

#include "ui/theme/theme.h"

namespace quarterturn {

// The window in small, as it looks in a mood. Ornament: the words stand beside it.
class MoodSwatch : public QWidget {
    Q_OBJECT
  public:
    explicit MoodSwatch(Mood mood, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Mood mood_;
};

}  // namespace quarterturn
