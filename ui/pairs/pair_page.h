#pragma once

#include <QWidget>
#include <optional>

#include "ui/pairs/shown_pairs.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace quarterturn {

class ModeRow;
class PairDetails;
class PairView;
class PicturePanel;
class PointsPanel;

// One pair large, with all that is said of it and can be done with it.
class PairPage : public QWidget {
    Q_OBJECT
  public:
    PairPage(Session& session, ShownPairs& pairs, LaidPairs& laid, QWidget* parent = nullptr);

    // Reads the records; answers whether the pair is there.
    bool show_pair(PairId pair);
    const std::optional<Pair>& pair() const { return pair_; }
    // From setting points, or from the picture of both; answers whether she was there.
    bool leave_stage();

  signals:
    void left();
    void step_asked(int pairs);
    void whole_screen_asked();
    void like_asked();
    void progress_asked();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void add_keys();
    QWidget* build_top();
    QWidget* build_comparing();
    void show_pictures();
    void show_laid();
    void set_points();
    void choose_picture();
    void keep_points(bool found_anew);

    Session& session_;
    ShownPairs& pairs_;
    LaidPairs& laid_;
    std::optional<Pair> pair_;
    std::optional<TwoPhotos> two_;
    QLabel* title_;
    QLabel* unsure_;
    PairView* view_;
    ModeRow* modes_;
    QPushButton* back_;
    QPushButton* next_;
    QStackedWidget* stage_;
    QWidget* comparing_;
    PointsPanel* points_;
    PicturePanel* picture_;
    PairDetails* details_;
};

}  // namespace quarterturn
