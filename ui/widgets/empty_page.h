#pragma once

#include <QWidget>

class QLabel;

namespace quarterturn {

// A screen with nothing on it yet: one sentence on what belongs here and the button that starts it.
class EmptyPage : public QWidget {
    Q_OBJECT
  public:
    EmptyPage(const QString& sentence, const QString& button_text, QWidget* parent = nullptr);

  signals:
    void started();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void keep_height_at(int width);

    QLabel* text_;
};

}  // namespace quarterturn
