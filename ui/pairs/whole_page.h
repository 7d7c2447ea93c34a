#pragma once

#include <QWidget>
#include <optional>

#include "ui/pairs/shown_pairs.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class ModeRow;
class PairView;

// One pair after the other on the whole screen, without a client's name, large enough for fingers,
// with the lines that photographers want beside their photos; where no pair is left, a sentence. It
// asks no gate: for a client it is given pairs that may be shown, and says so.
class WholePage : public QWidget {
    Q_OBJECT
  public:
    enum class Viewer { stylist, client };

    WholePage(Session& session, ShownPairs& pairs, LaidPairs& laid, Viewer viewer,
              QWidget* parent = nullptr);

    void show_position(int position);
    int position() const { return position_; }
    void step(int pairs);

  signals:
    void left();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* build_foot();
    QWidget* build_top();
    void show_what_it_is();
    void show_unfair(const LaidAndMeasured* laid);
    void show_pair();
    void show_light();
    void toggle_light();
    void show_credits(const TwoPhotos& two);

    Session& session_;
    ShownPairs& pairs_;
    LaidPairs& laid_;
    Viewer viewer_;
    int position_ = 0;
    bool photos_bright_ = false;  // though the window is dim
    PairView* view_;
    QLabel* nothing_;
    ModeRow* modes_;
    QLabel* what_;    // for a client: which pairs these are
    QLabel* unfair_;  // what was not taken alike
    QLabel* count_;
    QLabel* credits_;
    QPushButton* back_;
    QPushButton* next_;
    QPushButton* light_;
};

}  // namespace quarterturn
