#pragma once

#include <QFontMetrics>
#include <QRect>
#include <QStringList>
#include <vector>

#include "indexer/looks/time_lanes.h"

namespace quarterturn {

// Where a ready-by time stands above the lanes, and for whom.
struct ReadyFlag {
    int minute = 0;
    QString words;
    QRect place;  // of the words
};

// Where everything in the time chart stands, in px of the chart. Time runs along the reading
// direction; a lane for each stylist, also for one whom only the plan names.
class ChartLayout {
  public:
    ChartLayout() = default;
    ChartLayout(const MorningNeeds& needs, const std::vector<Seat>& seats, const QFont& font,
                int width, bool right_to_left);

    static int least_width(const MorningNeeds& needs, const std::vector<Seat>& seats,
                           const QFont& font);
    int height() const { return height_; }

    const ChartHours& hours() const { return hours_; }
    int lanes() const { return static_cast<int>(lanes_.size()); }
    const QRect& lane(int stylist) const { return lanes_[static_cast<std::size_t>(stylist)]; }
    int lane_at(int y) const;  // the nearest
    int x_of(int minute) const;
    int minutes_in(int px) const;  // later is positive
    QRect span(int from, int to, const QRect& lane) const;
    QRect bar(const Seat& seat) const;
    QRect name_place(int stylist) const;
    int cooling_y(const Cooling& cooling) const;
    int line() const { return line_; }
    int head() const { return head_; }  // above the lanes
    const std::vector<ReadyFlag>& flags() const { return flags_; }

  private:
    static int names_width(const QFontMetrics& metrics);
    void place_flags(const MorningNeeds& needs, const QFontMetrics& metrics);
    void place_lanes(const MorningNeeds& needs, const std::vector<Seat>& seats);

    ChartHours hours_;
    int left_ = 0;  // of the time, along the reading direction
    int end_ = 0;   // after the time
    int width_ = 1;
    int line_ = 1;
    int head_ = 0;
    int height_ = 0;
    bool right_to_left_ = false;
    std::vector<QRect> lanes_;
    std::vector<int> coolings_below_;
    std::vector<ReadyFlag> flags_;
};

QString first_name(const std::string& name);

}  // namespace quarterturn
