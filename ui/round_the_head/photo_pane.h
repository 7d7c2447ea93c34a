#pragma once

#include <QImage>
#include <QPointF>
#include <QWidget>

namespace quarterturn {

// How a photo is looked at closely: the middle of what is seen, in shares of the picture the right
// way round, and how large a pixel of the photo is drawn on the screen's own pixels. 0: whole.
struct Closeness {
    QPointF middle{0.5, 0.5};
    double scale = 0;

    bool operator==(const Closeness&) const = default;
};

// One photo, whole or down to its pixels. Drag or arrow keys move it, the wheel brings it nearer.
class PhotoPane : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoPane(QWidget* parent = nullptr);

    // `full` is the photo's size in pixels; the picture at hand may be smaller.
    void show_photo(const QImage& picture, QSize full, bool mirrored);
    void look(const Closeness& closeness);
    const Closeness& closeness() const { return closeness_; }
    void nearer(double times);

  signals:
    void looked(const quarterturn::Closeness& closeness);  // she moved it

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    double whole_scale() const;
    double scale() const;  // screen pixels for a pixel of the photo
    void move_by(const QPointF& pixels);
    void use(Closeness closeness);

    QImage picture_;
    QSize full_;
    bool mirrored_ = false;
    Closeness closeness_;
    QPointF pressed_at_;
};

}  // namespace quarterturn
