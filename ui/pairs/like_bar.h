#pragma once

#include <QFrame>
#include <QImage>

class QLabel;

namespace quarterturn {

// Above the likest looks: what they are like, and the way back.
class LikeBar : public QFrame {
    Q_OBJECT
  public:
    explicit LikeBar(QWidget* parent = nullptr);

    void show_like(const QString& sentence, const QImage& picture);

  signals:
    void left();

  private:
    QLabel* picture_;
    QLabel* sentence_;
};

}  // namespace quarterturn
