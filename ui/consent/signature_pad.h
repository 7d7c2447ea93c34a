#pragma once

#include <QImage>
#include <QPolygonF>
#include <QWidget>
#include <vector>

namespace quarterturn {

// Takes strokes of a pen, a finger or the mouse.
class SignaturePad : public QWidget {
    Q_OBJECT
  public:
    explicit SignaturePad(QWidget* parent = nullptr);

    bool is_signed() const;  // by strokes of some length: a dot is no signature
    void clear();
    // Ink on white, without the frame and the line to sign on.
    QImage picture() const;

  signals:
    void changed();

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void tabletEvent(QTabletEvent* event) override;

  private:
    void begin(QPointF at);
    void go_on(QPointF at);
    void end() { drawing_ = false; }
    void draw_strokes(QPainter& painter, const QColor& ink) const;

    std::vector<QPolygonF> strokes_;
    bool drawing_ = false;
};

}  // namespace quarterturn
