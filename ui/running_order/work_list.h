#pragma once

#include <QWidget>

#include "indexer/looks/running_order.h"

class QGridLayout;

namespace quarterturn {

// The clients in the order of work: when each is worked on and by whom, and when she must be and
// will be ready. Her name chooses her.
class WorkList : public QWidget {
    Q_OBJECT
  public:
    explicit WorkList(QWidget* parent = nullptr);

    void show_plan(const WeddingMorning& morning, const MorningPlan& plan);

  signals:
    void chosen(quarterturn::ClientId client);

  private:
    void add_row(const WeddingMorning& morning, const MorningPlan& plan, ClientId client);

    QGridLayout* grid_;
    int rows_ = 0;
};

}  // namespace quarterturn
