#pragma once

#include <QLabel>

namespace quarterturn {

// Where a photo would lie, were there one; may say so.
class EmptyFrame : public QLabel {
    Q_OBJECT
  public:
    explicit EmptyFrame(QSize size, const QString& words = {}, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace quarterturn
