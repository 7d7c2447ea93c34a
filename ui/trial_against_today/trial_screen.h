#pragma once

#include <QPointer>
#include <optional>

#include "indexer/looks/as_made.h"
#include "ui/shell/screen.h"
#include "ui/two_heads/pair_view.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class DayPhotosPanel;
class EmptyPage;
class Job;
class LaidPairs;
class ModeRow;
class Notice;
class AgreedPairChoice;
class PointsPanel;
class Session;
class WaysOut;

// The photos of the day beside those that were agreed at the trial, angle by angle.
class TrialScreen : public Screen {
    Q_OBJECT
  public:
    explicit TrialScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void save_to(const Path& file);  // "As agreed, as made", as PDF

  private:
    QWidget* build_side();
    QWidget* build_main();
    QWidget* build_comparing();
    void add_ways(QVBoxLayout& column);
    void choose_wedding();
    void show_angles();
    void show_waiting_photos();
    void propose_places();
    void place_photos();
    void ask_where();
    void show_pair();
    void show_sides();
    void show_words();
    void set_points();
    void keep_points(bool found_anew);
    const LookAsMade* look() const;
    const AgreedPair* pair() const;
    QString what_to_do(bool made) const;
    PairSide side_of(const std::optional<Photo>& photo, bool made) const;

    Session& session_;
    LaidPairs* laid_pairs_;
    std::optional<WeddingId> wedding_;
    std::optional<LookId> look_;
    std::optional<Angle> angle_;
    std::optional<WeddingAsMade> as_made_;
    std::optional<LaidPair> laid_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* going_;
    AgreedPairChoice* choice_;
    QPushButton* place_button_;
    QLabel* title_;
    QStackedWidget* stage_;
    QWidget* comparing_;
    QLabel* waiting_;
    PairView* view_;
    ModeRow* modes_;
    QPushButton* points_button_;
    PointsPanel* points_;
    DayPhotosPanel* day_photos_;
    QPointer<Job> proposing_;
    Notice* notice_;
    WaysOut* ways_;
};

}  // namespace quarterturn
