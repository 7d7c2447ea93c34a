#pragma once

#include "ui/widgets/text_button.h"

namespace quarterturn {

// A moment's word in the row at the top. Where she is now is bold with a thick line under it; the
// word that opens a menu of others has an arrow after it.
class MomentButton : public TextButton {
    Q_OBJECT
  public:
    enum class Opens { screen, menu };
    explicit MomentButton(const QString& title, Opens opens = Opens::screen,
                          QWidget* parent = nullptr);

    QSize sizeHint() const override;

  protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    QFont word_font() const;
    int arrow_width() const;

    Opens opens_;
    mutable QSize hint_;  // measured once: the row asks for it hundreds of times
};

}  // namespace quarterturn
