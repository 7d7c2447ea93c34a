#pragma once

#include <QWidget>

class QPushButton;

namespace quarterturn {

class Session;

// Undo and Redo, each grey while there is nothing to do. A click takes the keyboard from nothing,
// and a button that has the keyboard goes grey only when it is left, so that the keyboard stays.
class UndoButtons : public QWidget {
    Q_OBJECT
  public:
    explicit UndoButtons(Session& session, QWidget* parent = nullptr);

    void show_state();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QPushButton* add(const QString& name);

    Session& session_;
    QPushButton* undo_;
    QPushButton* redo_;
};

}  // namespace quarterturn
