#pragma once

#include <QWidget>

#include "ui/pictures/picture_loader.h"
#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace quarterturn {

class StepRow;

// How the look is made, beside its photos: whether it is signed off, what comes before the build,
// the steps with boxes to tick, what comes after, and what she said.
class RecipePanel : public QWidget {
    Q_OBJECT
  public:
    RecipePanel(const PictureLoader& pictures, const BoardType& type, QWidget* parent = nullptr);

    // The same look again keeps its place and the keyboard.
    void show_look(const BoardLook& look);
    void show_pictures();
    void veil_photos(bool veiled);
    std::vector<PictureWish> wishes() const;
    const std::vector<StepRow*>& steps() const { return steps_; }
    StepRow* next_step() const;  // null when all are done
    void go_to_next();           // with the keyboard
    // Whether it stands at its whole height, and what it lies in scrolls.
    void let_flow(bool flows);

  signals:
    void ticked(int step, bool done);
    void timer_asked(int step);
    void photo_asked(int step, std::size_t photo);
    void recipe_asked();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    bool shows_the_same(const BoardLook& look) const;
    void build(const BoardLook& look);
    void build_head();
    void add_changes(const BoardLook& look);
    void add_parts(const std::vector<RecipePart>& parts, const std::vector<std::string>& cautions);
    void add_drawing(const Recipe& recipe);
    void add_steps(const BoardLook& look);
    void add_no_recipe(const BoardLook& look);
    void show_progress(const BoardLook& look);
    void move_to_next(const StepRow* before);
    void scroll_to(const StepRow& step);
    void fit_scroll();
    QScrollArea* what_scrolls() const;

    const PictureLoader& pictures_;
    BoardType type_;
    std::optional<BoardLook> shown_;
    QVBoxLayout* standing_;
    QLabel* done_;
    QLabel* pins_;
    QPushButton* to_next_;
    QScrollArea* scroll_ = nullptr;
    bool flows_ = false;
    bool veiled_ = false;
    QVBoxLayout* all_;
    QVBoxLayout* column_ = nullptr;
    std::vector<StepRow*> steps_;
};

}  // namespace quarterturn
