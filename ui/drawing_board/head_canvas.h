#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "indexer/record/recipe/head_drawing.h"

namespace quarterturn {

enum class DrawingTool { parting, section, mark, take_out };

// The head to draw on. With the mouse or a finger one draws along; from the keyboard the arrow keys
// move a crosshair, Space puts a point, Enter the last one. Tab goes from one thing drawn to the
// next before it leaves. It changes nothing itself: it tells what was drawn. Left stays left, also
// where text runs from right to left.
class HeadCanvas : public QWidget {
    Q_OBJECT
  public:
    explicit HeadCanvas(QWidget* parent = nullptr);

    void show_drawing(const HeadDrawing& drawing);
    void use(DrawingTool tool);
    std::optional<std::size_t> chosen() const { return chosen_; }  // of rules/drawing_on_head.h
    QString hint() const;  // what one can do now, or what is chosen

    QRectF head_box() const;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  signals:
    void drawn(const quarterturn::Stroke& stroke);
    void dropped(quarterturn::PlanPoint at);
    void taken_out(std::size_t thing);
    void tool_wanted(quarterturn::DrawingTool tool);  // by its digit
    void hint_changed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

  private:
    bool draws_lines() const;
    StrokeKind kind() const;
    void choose(std::optional<std::size_t> thing);
    void touch_at(PlanPoint point);
    bool press_key(int key, bool finely);
    void move_crosshair(double x, double y);
    void put_point(bool last);
    void end_line(const Stroke& stroke);
    void leave_line();
    void look_again();
    QString line_hint() const;
    HeadDrawing with_open_line() const;
    void draw_ground(QPainter& painter) const;
    void draw_names(QPainter& painter) const;
    void draw_chosen(QPainter& painter) const;
    void draw_crosshair(QPainter& painter) const;

    HeadDrawing drawing_;
    DrawingTool tool_ = DrawingTool::parting;
    std::optional<std::size_t> chosen_;
    std::vector<PlanPoint> trail_;   // of the hand, while it draws
    std::vector<PlanPoint> points_;  // put from the keyboard, while a line is open
    PlanPoint crosshair_;
    bool by_keys_ = false;
};

}  // namespace quarterturn
