#pragma once

#include <QFrame>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

class QHBoxLayout;
class QLabel;
class QVBoxLayout;

namespace quarterturn {

class PhotoTile;
class PictureLoader;
class TickBox;

// One step of the build: a large box to tick, its words, cautions beside it, its photos, and a
// button for the wait it needs. A press anywhere on it ticks. The next one to do has a frame and
// says so.
class StepRow : public QFrame {
    Q_OBJECT
  public:
    StepRow(int number, const BoardStep& step, const BoardType& type, QWidget* parent = nullptr);

    void show_done(bool done, bool next);
    void show_pictures(const PictureLoader& pictures, bool are_veiled);
    const BoardStep& step() const { return step_; }
    TickBox& box() const { return *box_; }
    int photo_edge() const;

  signals:
    void ticked(bool done);
    void timer_asked();
    void photo_asked(std::size_t photo);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    void add_words(QVBoxLayout& column);
    void add_photos(QVBoxLayout& column);
    void add_timer(QVBoxLayout& column);

    int number_;
    BoardStep step_;
    BoardType type_;
    TickBox* box_;
    QLabel* next_;
    QLabel* words_;
    std::vector<PhotoTile*> photos_;
    bool is_next_ = false;
};

}  // namespace quarterturn
