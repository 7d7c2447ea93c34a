#pragma once

#include <QWidget>

class QKeyEvent;
class QPushButton;

namespace quarterturn {

// At the foot of a form: a button that keeps what its fields say, and one that leaves everything as
// it was.
class FormButtons : public QWidget {
    Q_OBJECT
  public:
    // `beside` stands quietly after them.
    explicit FormButtons(const QString& keep, const QString& beside = {},
                         QWidget* parent = nullptr);

    // Return keeps, or leaves where that button has the keyboard, and Escape leaves; answers
    // whether the key was one of them.
    bool take_key(const QKeyEvent& event);

  signals:
    void kept();
    void left();

  private:
    QPushButton* leave_;
};

}  // namespace quarterturn
