#pragma once

#include "ui/widgets/text_button.h"

namespace quarterturn {

// A moment's word in the row at the top. Where she is now is bold with a thick line under it.
class MomentButton : public TextButton {
    Q_OBJECT
  public:
    explicit MomentButton(const QString& title, QWidget* parent = nullptr);

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QFont word_font() const;
};

}  // namespace quarterturn
