#pragma once

#include <QFrame>
#include <QImage>

class QLabel;
class QPushButton;

namespace quarterturn {

// Above the likest looks: what they are like, and the way back.
class LikeBar : public QFrame {
    Q_OBJECT
  public:
    explicit LikeBar(QWidget* parent = nullptr);

    // `picture`: what a client brought; null where they are like a pair.
    void show_like(const QString& sentence, const QImage& picture);
    QPushButton& keep_button() { return *keep_; }

  signals:
    void left();
    void keep_asked();  // the picture, with a client

  private:
    QLabel* picture_;
    QLabel* sentence_;
    QLabel* whose_;
    QPushButton* keep_;
};

}  // namespace quarterturn
