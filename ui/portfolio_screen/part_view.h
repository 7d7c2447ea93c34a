#pragma once

#include <QImage>
#include <QWidget>

namespace quarterturn {

// A picture as large as there is room for, to be judged. Where a part of it is asked for, a box on
// it is drawn with the mouse or a finger, or moved with the arrow keys; with Shift they change its
// size.
class PartView : public QWidget {
    Q_OBJECT
  public:
    explicit PartView(QWidget* parent = nullptr);

    void show_picture(const QImage& picture, const QString& name);
    // In shares of the picture's width and height.
    void ask_part(const QImage& picture, const QString& name, const QRectF& part);
    bool asks_part() const { return asks_; }
    const QRectF& part() const { return part_; }

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

  private:
    QRectF picture_area() const;
    QPointF share_at(const QPointF& place) const;
    QRectF place_of_part() const;
    void take_part(const QRectF& part);
    void paint_part(QPainter& painter, const QRectF& area) const;
    bool move_by_key(const QKeyEvent& event);

    QImage picture_;
    bool asks_ = false;
    QRectF part_;
    QPointF drawn_from_;
};

}  // namespace quarterturn
