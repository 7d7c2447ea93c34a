#pragma once

#include <QWidget>

class QPushButton;

namespace quarterturn {

// A screen with nothing on it yet: one sentence on what belongs here and the button that starts it.
class EmptyPage : public QWidget {
    Q_OBJECT
  public:
    EmptyPage(const QString& sentence, const QString& button_text, QWidget* parent = nullptr);

  signals:
    void started();
};

}  // namespace quarterturn
