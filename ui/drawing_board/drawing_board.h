#pragma once

#include <QWidget>
#include <vector>

#include "ui/drawing_board/head_canvas.h"

class QButtonGroup;
class QLabel;
class QPushButton;

namespace quarterturn {

class MarkList;

// Where she draws partings and sections on the head seen from above, and drops numbered marks with
// words. Undo and redo go back and forth within the drawing while the keyboard is in it, and leave
// the keys to the window when there is nothing to undo.
class DrawingBoard : public QWidget {
    Q_OBJECT
  public:
    explicit DrawingBoard(QWidget* parent = nullptr);

    // Forgets what could be undone, unless it is what is shown already.
    void show_drawing(const HeadDrawing& drawing);
    HeadDrawing drawing() const { return drawing_; }

  signals:
    void changed();  // by her, not by show_drawing()

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QWidget* build_tools();
    QPushButton* add_tool(DrawingTool tool, const QString& name, const QString& described);
    void use(DrawingTool tool);
    void show_tools();
    void take(const HeadDrawing& drawing);  // as one step that can be undone
    void drop_mark(PlanPoint at);
    void write(int number, const QString& words);
    bool undoes(const QKeyEvent& key) const;
    void step(std::vector<HeadDrawing>& from, std::vector<HeadDrawing>& to);
    void show_all();

    HeadDrawing drawing_;
    std::vector<HeadDrawing> past_;
    std::vector<HeadDrawing> undone_;
    QButtonGroup* tools_;
    QPushButton* back_;
    HeadCanvas* canvas_;
    QLabel* hint_;
    MarkList* marks_;
};

}  // namespace quarterturn
