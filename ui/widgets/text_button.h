#pragma once

#include <QAbstractButton>

namespace quarterturn {

// What every button of ours that paints itself has in common: it takes the keyboard, is pressed by
// Space and by Return, and shows that the mouse is over it.
class TextButton : public QAbstractButton {
    Q_OBJECT
  public:
    explicit TextButton(const QString& text, QWidget* parent = nullptr);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace quarterturn
