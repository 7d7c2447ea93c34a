#pragma once

#include <QAbstractButton>

#include "indexer/record/morning.h"

namespace quarterturn {

// What a bar of the time chart says.
struct BarFace {
    Seat seat;
    QString name;
    QString task;
    int late = 0;  // minutes; told where she is ready
};

// One part of a client's morning. It is dragged, or moved by the arrow keys; a click or Return
// chooses the client.
class SeatBar : public QAbstractButton {
    Q_OBJECT
  public:
    explicit SeatBar(QWidget* parent);

    void show_face(const BarFace& face);
    const Seat& seat() const { return face_.seat; }

  signals:
    void dragged(const QPoint& by);  // px from where it was taken hold of
    void let_go();
    void given_up();                         // Escape
    void nudged(int minutes, int stylists);  // minutes later, stylists further down
    void looked_at();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    void draw_words(QPainter& painter) const;
    void draw_late(QPainter& painter, const QRect& place) const;

    BarFace face_;
    QPoint taken_at_;
    bool dragging_ = false;
};

}  // namespace quarterturn
