#pragma once

#include <QWidget>
#include <optional>

#include "indexer/looks/running_order.h"
#include "ui/running_order/chart_layout.h"

namespace quarterturn {

class SeatBar;

// The plan along the time, a lane for each stylist. Bars are dragged and moved by keys; while one
// is dragged the plan stands as it would be, and nothing is kept before it is let go.
class MorningChart : public QWidget {
    Q_OBJECT
  public:
    explicit MorningChart(QWidget* parent = nullptr);

    void show_plan(const MorningNeeds& needs, const std::vector<Seat>& seats);
    void show_now(std::optional<int> minute);
    bool is_dragging() const { return tried_.has_value(); }

    QSize sizeHint() const override { return minimumSizeHint(); }
    QSize minimumSizeHint() const override;

  signals:
    void tried(const std::vector<quarterturn::Seat>& seats);  // as it would be
    void given_up();
    void changed(const std::vector<quarterturn::Seat>& seats, quarterturn::ClientId client);
    void chosen(quarterturn::ClientId client);
    void looked_at(QWidget* bar);
    void laid_out();  // at another height, perhaps

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void make_bars();
    SeatBar* make_bar();
    void lay_out();
    void show_bars();
    std::vector<Seat> moved_by(const Seat& seat, int to, int stylist) const;
    void drag(const SeatBar& bar, const QPoint& by);
    void let_go();
    void give_up();
    void nudge(const SeatBar& bar, int minutes, int stylists);
    const std::vector<Seat>& standing() const { return tried_ ? *tried_ : seats_; }

    MorningNeeds needs_;
    std::vector<Seat> seats_;
    std::optional<std::vector<Seat>> tried_;
    std::optional<Seat> held_;  // as it stood when it was taken hold of
    std::optional<int> now_;
    ChartLayout layout_;
    std::vector<SeatBar*> bars_;  // as the seats
};

}  // namespace quarterturn
