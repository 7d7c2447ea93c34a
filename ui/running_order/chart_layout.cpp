#include "ui/running_order/chart_layout.h"

#include <QCoreApplication>
#include <map>
#include <ranges>

#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int lines_in_a_seat = 3;
constexpr int names_letters = 10;
constexpr int clocks_in_half_hour = 2;  // at least, so that 20 minutes have room for words

int cooling_step() {
    return space(2);
}

int clock_width(const QFontMetrics& metrics) {
    return metrics.horizontalAdvance(QStringLiteral("00:00"));
}

QString flag_words(const QStringList& names, std::size_t clients, int minute) {
    const QString at = from_utf8(minute_text(minute));
    const QString who = names.join(QStringLiteral(", "));
    if (names.size() == static_cast<qsizetype>(clients) && clients > 1) {
        return QCoreApplication::translate("morning_chart", "all ready by %1").arg(at);
    }
    //: names, and when they must be ready
    return QCoreApplication::translate("morning_chart", "%1 by %2").arg(who, at);
}

}  // namespace

QString first_name(const std::string& name) {
    return from_utf8(name).section(QLatin1Char(' '), 0, 0);
}

int ChartLayout::names_width(const QFontMetrics& metrics) {
    return metrics.averageCharWidth() * names_letters + space(3);
}

int ChartLayout::least_width(const MorningNeeds& needs, const std::vector<Seat>& seats,
                             const QFont& font) {
    const ChartHours hours = roomy_chart_hours(needs, seats);
    const QFontMetrics metrics(font);
    const int half_hour = clocks_in_half_hour * clock_width(metrics);
    return names_width(metrics) + (hours.to - hours.from) / half_an_hour * half_hour;
}

ChartLayout::ChartLayout(const MorningNeeds& needs, const std::vector<Seat>& seats,
                         const QFont& font, int width, bool right_to_left)
    : hours_(roomy_chart_hours(needs, seats)), right_to_left_(right_to_left) {
    const QFontMetrics metrics(font);
    line_ = metrics.height();
    left_ = names_width(metrics);
    end_ = clock_width(metrics) / 2 + space(2);
    width_ = std::max(1, width - left_ - end_);
    place_flags(needs, metrics);
    place_lanes(needs, seats);
}

// Words end at their time, since what must be ready stands late. Those that would meet stand in
// rows, the latest above, so that no line down from one runs through another.
void ChartLayout::place_flags(const MorningNeeds& needs, const QFontMetrics& metrics) {
    std::map<int, QStringList> names;
    for (const MorningClient& client : needs.clients) {
        names[client.ready_by] << first_name(client.name);
    }
    std::vector<QRect> placed;
    int rows = 0;
    const int row = line_ + space(1);
    for (const auto& [minute, who] : names | std::views::reverse) {
        ReadyFlag flag{minute, flag_words(who, needs.clients.size(), minute), {}};
        const int room = std::min(metrics.horizontalAdvance(flag.words) + space(1), width_ / 2);
        const int x = x_of(minute) - (right_to_left_ ? 0 : room);
        flag.place = QRect(x, line_ + space(1), room, row);
        while (std::ranges::any_of(
            placed, [&](const QRect& other) { return other.intersects(flag.place); })) {
            flag.place.translate(0, row);
        }
        placed.push_back(flag.place.adjusted(-space(3), 0, space(3), -1));
        rows = std::max(rows, (flag.place.top() - line_) / row + 1);
        flags_.push_back(std::move(flag));
    }
    head_ = line_ + space(3) + rows * row;
}

void ChartLayout::place_lanes(const MorningNeeds& needs, const std::vector<Seat>& seats) {
    std::size_t count = needs.stylists.size();
    for (const Seat& seat : seats) {
        count = std::max(count, static_cast<std::size_t>(std::max(0, seat.stylist)) + 1);
    }
    coolings_below_.assign(count, 1);
    for (const Cooling& cooling : coolings(seats)) {
        int& below = coolings_below_[static_cast<std::size_t>(cooling.stylist)];
        below = std::max(below, cooling.lane + 1);
    }
    const int tall = lines_in_a_seat * line_ + space(3);
    int y = head_;
    for (const int below : coolings_below_) {
        lanes_.emplace_back(right_to_left_ ? end_ : left_, y, width_, tall);
        y += tall + below * cooling_step() + space(4);
    }
    height_ = y;
}

int ChartLayout::lane_at(int y) const {
    int lane = 0;
    while (lane + 1 < lanes() && y >= lanes_[static_cast<std::size_t>(lane) + 1].top()) ++lane;
    return lane;
}

int ChartLayout::x_of(int minute) const {
    const int along = width_ * (minute - hours_.from) / (hours_.to - hours_.from);
    return right_to_left_ ? end_ + width_ - along : left_ + along;
}

int ChartLayout::minutes_in(int px) const {
    const int minutes = px * (hours_.to - hours_.from) / width_;
    return right_to_left_ ? -minutes : minutes;
}

QRect ChartLayout::span(int from, int to, const QRect& lane) const {
    const int one = x_of(from);
    const int other = x_of(to);
    return {std::min(one, other), lane.top(), std::abs(other - one), lane.height()};
}

// Wide enough to be taken hold of.
QRect ChartLayout::bar(const Seat& seat) const {
    QRect place = span(seat.begins, seat.ends, lane(std::clamp(seat.stylist, 0, lanes() - 1)));
    if (place.width() >= least_target) return place;
    if (right_to_left_) place.setLeft(place.right() - least_target + 1);
    place.setWidth(least_target);
    return place;
}

QRect ChartLayout::name_place(int stylist) const {
    const QRect& there = lane(stylist);
    const int x = right_to_left_ ? there.right() + space(2) : 0;
    return {x, there.top(), left_ - space(2), there.height()};
}

int ChartLayout::cooling_y(const Cooling& cooling) const {
    const auto stylist = static_cast<std::size_t>(std::clamp(cooling.stylist, 0, lanes() - 1));
    const int row = std::min(cooling.lane, coolings_below_[stylist] - 1);
    return lanes_[stylist].bottom() + space(1) + (row + 1) * cooling_step() - space(1);
}

}  // namespace quarterturn
