#pragma once
// How a plan lies along the time, the same on screen and on paper.

#include "indexer/rules/running_order.h"

namespace quarterturn {

inline constexpr int half_an_hour = 30;

// Minutes; whole half hours, and never nothing.
struct ChartHours {
    int from = 0;
    int to = half_an_hour;
};
// From the first begin to the last end.
ChartHours chart_hours(const std::vector<Seat>& seats);
// Also the ready-by times, and room to move parts to.
ChartHours roomy_chart_hours(const MorningNeeds& needs, const std::vector<Seat>& seats);

// Hair that cools between set and finish. Those of one stylist that overlap lie in lanes of their
// own, from 0.
struct Cooling {
    ClientId client;
    int stylist = 0;
    int from = 0;
    int to = 0;
    int lane = 0;
};
std::vector<Cooling> coolings(const std::vector<Seat>& seats);

}  // namespace quarterturn
