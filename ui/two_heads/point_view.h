#pragma once

#include <QImage>
#include <QWidget>

#include "indexer/record/board.h"

namespace quarterturn {

// A whole photo with two points on it, the top of the hair and the chin or nape, to be dragged with
// mouse or finger, or moved with the arrow keys: Space takes the other one, Shift moves further.
class PointView : public QWidget {
    Q_OBJECT
  public:
    explicit PointView(QWidget* parent = nullptr);

    void show_picture(const QImage& picture, bool mirrored);  // upright, not yet turned
    void show_points(const HeadPoints& points);
    const HeadPoints& points() const { return points_; }
    void set_names(const QString& photo, const QString& bottom);  // "chin" or "nape"

    QSize sizeHint() const override;
    QPointF place_of(const PicturePoint& point) const;  // in the widget

  signals:
    void moved();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

  private:
    QRectF picture_area() const;
    PicturePoint& in_hand() { return lower_ ? points_.bottom : points_.top; }
    void move_to(const QPointF& place);
    void move_by(double right, double down);
    void paint_point(QPainter& painter, const PicturePoint& point, const QString& name,
                     bool current) const;
    void tell_state();

    QImage picture_;
    HeadPoints points_{{0.5, 0.2}, {0.5, 0.6}};
    bool lower_ = false;  // which one the keys move
    QString photo_;
    QString bottom_;
};

}  // namespace quarterturn
