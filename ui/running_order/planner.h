#pragma once

#include <QObject>
#include <optional>
#include <thread>

#include "indexer/looks/running_order.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

// Finds the best plan on a thread of its own, which can take a second. Of what is asked meanwhile
// only the last is planned.
class Planner : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;
    ~Planner() override;  // waits for the plan it is at

    // Asks for the plan unless it is known, or being found, already.
    void plan(const WeddingMorning& morning);
    // Of what was asked last; nothing while it is being found.
    const std::optional<MorningPlan>& best() const { return best_; }
    QString refusal() const { return refusal_; }  // why there is none

  signals:
    void planned();

  private:
    struct Answer {
        std::optional<MorningPlan> best;
        QString refusal;
    };
    void start();
    void take(Answer answer);

    std::optional<WeddingMorning> asked_;
    MorningNeeds at_work_;
    std::optional<MorningPlan> best_;
    QString refusal_;
    bool working_ = false;
    Mailbox mailbox_;
    std::jthread thread_;
};

}  // namespace quarterturn
