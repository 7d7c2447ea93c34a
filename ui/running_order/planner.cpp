#include "ui/running_order/planner.h"
#include "ui/widgets/said_here.h"

namespace quarterturn {

Planner::~Planner() = default;

void Planner::plan(const WeddingMorning& morning) {
    if (asked_ && asked_->needs == morning.needs) return;
    asked_ = morning;
    best_.reset();
    refusal_.clear();
    if (!working_) start();
}

void Planner::start() {
    working_ = true;
    at_work_ = asked_->needs;
    thread_ = std::jthread([this, morning = *asked_] {
        Answer answer;
        try {
            answer.best = best_plan(morning);
        } catch (const std::exception& problem) {
            answer.refusal = said_here(problem.what());
        }
        mailbox_.post([this, answer = std::move(answer)] { take(answer); });
    });
}

void Planner::take(Answer answer) {
    working_ = false;
    if (at_work_ != asked_->needs) return start();
    best_ = std::move(answer.best);
    refusal_ = std::move(answer.refusal);
    emit planned();
}

}  // namespace quarterturn
