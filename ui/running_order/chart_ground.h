#pragma once

#include <QPalette>
#include <optional>

#include "ui/running_order/chart_layout.h"

class QPainter;

namespace quarterturn {

// What the bars lie on: half hours, who is there from when on, breaks, hair that cools, when each
// must be ready, and on the day the time it is.
struct ChartGround {
    const ChartLayout& layout;
    const MorningNeeds& needs;
    const std::vector<Seat>& seats;
    std::optional<int> now;
};

void draw_chart_ground(QPainter& painter, const ChartGround& ground, const QPalette& palette);

}  // namespace quarterturn
