#pragma once

#include <QWidget>
#include <optional>

#include "indexer/looks/running_order.h"

class QLabel;
class QScrollArea;

namespace quarterturn {

class GapsPart;
class MorningChart;
class Planner;
class Sentences;
class Session;
class WorkList;

// The plan of a morning: whether all can be ready at all, the time chart with what follows from it,
// and the clients in the order of work.
class MorningPlanPart : public QWidget {
    Q_OBJECT
  public:
    explicit MorningPlanPart(Session& session, QWidget* parent = nullptr);

    // `plan`: nothing while there is none to show.
    void show_plan(const WeddingMorning& morning, const std::optional<MorningPlan>& plan,
                   const Planner& planner);
    bool is_held() const;  // a bar is being dragged

  signals:
    void moved(const std::vector<quarterturn::Seat>& seats, quarterturn::ClientId client);
    void given_up();  // the bar goes back to its place
    void chosen(quarterturn::ClientId client);
    void minutes_given(quarterturn::ClientId client, int minutes);
    void ready_by_given(quarterturn::ClientId client, int minute);
    void not_understood(const QString& sentence);

  private:
    void build();
    void build_gaps();
    QWidget* build_chart();
    void show_head();
    QString possible_words() const;
    void show_consequences();
    void show_now();

    Session& session_;
    WeddingMorning morning_;
    std::optional<MorningPlan> plan_;
    std::optional<MorningPlan> best_;  // nothing while it is being found
    QString refusal_;
    QLabel* title_;
    QLabel* when_;
    QLabel* possible_;
    GapsPart* gaps_;
    QWidget* planned_;
    MorningChart* chart_;
    QScrollArea* chart_scroll_;
    Sentences* sentences_;
    QLabel* remarks_;
    WorkList* list_;
};

}  // namespace quarterturn
