#pragma once

#include <QImage>
#include <QWidget>

namespace quarterturn {

// One page lying on the table, as large as there is room for.
class PageView : public QWidget {
    Q_OBJECT
  public:
    explicit PageView(QWidget* parent = nullptr);

    // `waiting` is said while there is no page, or over the one that is no longer right.
    void show_page(const QImage& page, const QString& waiting);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QImage page_;
    QString waiting_;
};

}  // namespace quarterturn
