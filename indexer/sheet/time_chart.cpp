#include "indexer/sheet/time_chart.h"

#include <algorithm>

#include "indexer/looks/time_lanes.h"

namespace quarterturn {
namespace {

constexpr double label_share = 0.075;  // of the width, for the stylists' names
constexpr double bar_padding = 0.6;    // mm between a bar's outline and its text
constexpr double bar_gap = 1.2;        // mm
constexpr int lines_in_a_bar = 4;

class TimeChart {
  public:
    TimeChart(SheetFlow& flow, const MorningNeeds& needs, const std::vector<Seat>& seats)
        : flow_(flow),
          needs_(needs),
          seats_(seats),
          points_(flow.style().caption_points),
          line_(flow.line_height(points_)),
          left_(flow.style().left() + flow.style().width() * label_share),
          hours_(chart_hours(seats)),
          coolings_(coolings(seats)) {}

    void put() {
        put_hours();
        for (int i = 0; i < static_cast<int>(needs_.stylists.size()); ++i) put_stylist(i);
        flow_.down(flow_.style().space);
    }

  private:
    double x_of(int minute) const {
        const double right = flow_.style().left() + flow_.style().width();
        return left_ + (right - left_) * (minute - hours_.from) / (hours_.to - hours_.from);
    }

    // A label where there is room for one: each half hour, else each hour or two.
    void put_hours() {
        const double half = x_of(hours_.from + half_an_hour) - x_of(hours_.from);
        int every = half_an_hour;
        while (half * every / half_an_hour < 4 * line_) every *= 2;
        const int first = (hours_.from + every - 1) / every * every;
        for (int minute = first; minute < hours_.to; minute += every) {
            flow_.put_text(text_item(minute_text(minute), points_, true, Tone::soft), x_of(minute),
                           flow_.y(), 4 * line_, line_);
        }
        flow_.down(line_ + bar_gap);
    }

    void put_stylist(int stylist) {
        const double top = flow_.y();
        const double height = lines_in_a_bar * line_ + 2 * bar_padding;
        const double row = height + 3 * bar_gap + lanes_of(stylist) * (line_ + bar_gap);
        put_half_hours(top, row);
        const std::string name = "Stylist " + std::to_string(stylist + 1);
        flow_.put_text(text_item(name, points_, true), flow_.style().left(), top,
                       left_ - flow_.style().left() - bar_gap, height);
        for (const Break& pause : needs_.stylists[static_cast<std::size_t>(stylist)].breaks) {
            put_break(pause, top, height);
        }
        for (const Seat& seat : seats_) {
            if (seat.stylist == stylist) put_seat(seat, top, height);
        }
        for (const Cooling& cooling : coolings_) {
            if (cooling.stylist != stylist) continue;
            put_cooling(cooling, top + height + bar_gap + cooling.lane * (line_ + bar_gap));
        }
        flow_.down(row);
    }

    // Below the bars, and one that parts the stylist from the next.
    void put_half_hours(double top, double height) {
        for (int minute = hours_.from; minute <= hours_.to; minute += half_an_hour) {
            flow_.put(RuleItem{x_of(minute), top, x_of(minute), top + height});
        }
        const double y = top + height - bar_gap;
        flow_.put(RuleItem{flow_.style().left(), y, x_of(hours_.to), y});
    }

    void put_break(const Break& pause, double top, double height) {
        const int begins = std::max(pause.begins, hours_.from);
        const int ends = std::min(pause.ends, hours_.to);
        if (begins >= ends) return;
        const double x = x_of(begins);
        flow_.put(BarItem{{x, top, x_of(ends) - x, height}, BarFill::hatched});
    }

    void put_seat(const Seat& seat, double top, double height) {
        const Box box{x_of(seat.begins), top, x_of(seat.ends) - x_of(seat.begins), height};
        flow_.put(BarItem{box, seat.part == SeatPart::set ? BarFill::plain : BarFill::tinted});
        const double width = box.width - 2 * bar_padding;
        const auto line = [&](const std::string& text, bool bold, double y, double room) {
            flow_.put_text(text_item(text, points_, bold), box.x + bar_padding, y, width, room);
        };
        line(name_of(seat.client), true, top + bar_padding, 2 * line_);
        line(task_word(needs_, seat), false, top + bar_padding + 2 * line_, line_);
        line(minute_text(seat.begins), false, top + bar_padding + 3 * line_, line_);
    }

    int lanes_of(int stylist) const {
        int lanes = 0;
        for (const Cooling& cooling : coolings_) {
            if (cooling.stylist == stylist) lanes = std::max(lanes, cooling.lane + 1);
        }
        return lanes;
    }

    void put_cooling(const Cooling& cooling, double y) {
        const double from = x_of(cooling.from);
        const double to = x_of(cooling.to);
        flow_.put(ThreadItem{from, y, to, y});
        flow_.put_text(text_item(name_of(cooling.client) + " cools", points_, false, Tone::soft),
                       from + bar_padding, y + bar_padding / 2, to - from, line_);
    }

    std::string name_of(ClientId client) const {
        return std::ranges::find(needs_.clients, client, &MorningClient::client)->name;
    }

    SheetFlow& flow_;
    const MorningNeeds& needs_;
    const std::vector<Seat>& seats_;
    double points_;
    double line_;
    double left_;
    ChartHours hours_;
    std::vector<Cooling> coolings_;
};

}  // namespace

void put_time_chart(SheetFlow& flow, const MorningNeeds& needs, const std::vector<Seat>& seats) {
    if (!seats.empty()) TimeChart(flow, needs, seats).put();
}

}  // namespace quarterturn
