#pragma once

#include "ui/wedding_morning/board_type.h"
#include "ui/widgets/text_button.h"

namespace quarterturn {

// A box that is ticked with a wet thumb; the number of the step stands in it until then.
class TickBox : public TextButton {
    Q_OBJECT
  public:
    TickBox(int number, const BoardType& type, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QString number_;
};

}  // namespace quarterturn
