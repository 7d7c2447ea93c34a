#pragma once

#include <QWidget>

#include "ui/round_the_head/head_round.h"
#include "ui/widgets/plan_place.h"

namespace quarterturn {

class HeadPlan;

// The head plan filled from the records, with pictures.
class PlanPart : public QWidget {
    Q_OBJECT
  public:
    PlanPart(Session& session, const HeadRound& round, QWidget* parent = nullptr);

    void show_round();
    HeadPlan& plan() { return *plan_; }

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    PlanPlaceState state_at(Angle angle) const;
    int picture_edge(Angle angle) const;
    void show_places();
    void want_pictures();

    Session& session_;
    const HeadRound& round_;
    HeadPlan* plan_;
};

}  // namespace quarterturn
