#include "indexer/sheet/time_chart.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr int half_an_hour = 30;
constexpr double label_share = 0.075;  // of the width, for the stylists' names
constexpr double bar_padding = 0.6;    // mm between a bar's outline and its text
constexpr double bar_gap = 1.2;        // mm
constexpr int lines_in_a_bar = 4;

struct Wait {
    std::string name;
    int from = 0;
    int to = 0;
    int lane = 0;  // below the bars, from 0
};

class TimeChart {
  public:
    TimeChart(SheetFlow& flow, const MorningNeeds& needs, const std::vector<Seat>& seats)
        : flow_(flow),
          needs_(needs),
          seats_(seats),
          points_(flow.style().caption_points),
          line_(flow.line_height(points_)),
          left_(flow.style().left() + flow.style().width() * label_share) {
        const auto [first, last] = std::ranges::minmax(seats, {}, &Seat::begins);
        from_ = first.begins / half_an_hour * half_an_hour;
        const int ends = std::ranges::max(seats, {}, &Seat::ends).ends;
        to_ =
            std::max((ends + half_an_hour - 1) / half_an_hour * half_an_hour, from_ + half_an_hour);
    }

    void put() {
        put_hours();
        for (int i = 0; i < static_cast<int>(needs_.stylists.size()); ++i) put_stylist(i);
        flow_.down(flow_.style().space);
    }

  private:
    double x_of(int minute) const {
        const double right = flow_.style().left() + flow_.style().width();
        return left_ + (right - left_) * (minute - from_) / (to_ - from_);
    }

    // A label where there is room for one: each half hour, else each hour or two.
    void put_hours() {
        const double half = x_of(from_ + half_an_hour) - x_of(from_);
        int every = half_an_hour;
        while (half * every / half_an_hour < 4 * line_) every *= 2;
        const int first = (from_ + every - 1) / every * every;
        for (int minute = first; minute < to_; minute += every) {
            flow_.put_text(text_item(minute_text(minute), points_, true, Tone::soft), x_of(minute),
                           flow_.y(), 4 * line_, line_);
        }
        flow_.down(line_ + bar_gap);
    }

    void put_stylist(int stylist) {
        const double top = flow_.y();
        const double height = lines_in_a_bar * line_ + 2 * bar_padding;
        const std::vector<Wait> waits = waits_of(stylist);
        const double row = height + 3 * bar_gap + lanes_of(waits) * (line_ + bar_gap);
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
        for (const Wait& wait : waits) {
            put_wait(wait, top + height + bar_gap + wait.lane * (line_ + bar_gap));
        }
        flow_.down(row);
    }

    // Below the bars, and one that parts the stylist from the next.
    void put_half_hours(double top, double height) {
        for (int minute = from_; minute <= to_; minute += half_an_hour) {
            flow_.put(RuleItem{x_of(minute), top, x_of(minute), top + height});
        }
        const double y = top + height - bar_gap;
        flow_.put(RuleItem{flow_.style().left(), y, x_of(to_), y});
    }

    void put_break(const Break& pause, double top, double height) {
        const int begins = std::max(pause.begins, from_);
        const int ends = std::min(pause.ends, to_);
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

    // Those that overlap stand one below the other.
    std::vector<Wait> waits_of(int stylist) const {
        std::vector<Wait> waits;
        std::vector<int> free_from;  // of each lane
        for (const Seat& seat : seats_) {
            const auto finish = std::ranges::find_if(seats_, [&](const Seat& later) {
                return later.client == seat.client && later.part == SeatPart::finish;
            });
            if (seat.stylist != stylist || seat.part != SeatPart::set) continue;
            if (finish == seats_.end() || finish->begins <= seat.ends) continue;
            const auto lane =
                std::ranges::find_if(free_from, [&](int minute) { return minute <= seat.ends; });
            const int number = static_cast<int>(lane - free_from.begin());
            if (lane == free_from.end()) free_from.push_back(0);
            free_from[static_cast<std::size_t>(number)] = finish->begins;
            waits.push_back({name_of(seat.client) + " cools", seat.ends, finish->begins, number});
        }
        return waits;
    }

    static int lanes_of(const std::vector<Wait>& waits) {
        int lanes = 0;
        for (const Wait& wait : waits) lanes = std::max(lanes, wait.lane + 1);
        return lanes;
    }

    void put_wait(const Wait& wait, double y) {
        flow_.put(ThreadItem{x_of(wait.from), y, x_of(wait.to), y});
        flow_.put_text(text_item(wait.name, points_, false, Tone::soft),
                       x_of(wait.from) + bar_padding, y + bar_padding / 2,
                       x_of(wait.to) - x_of(wait.from), line_);
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
    int from_ = 0;
    int to_ = 0;
};

}  // namespace

void put_time_chart(SheetFlow& flow, const MorningNeeds& needs, const std::vector<Seat>& seats) {
    if (!seats.empty()) TimeChart(flow, needs, seats).put();
}

}  // namespace quarterturn
