#include "ui/running_order/morning_chart.h"

#include <QApplication>
#include <QPainter>

#include "indexer/rules/running_order_check.h"
#include "ui/running_order/chart_ground.h"
#include "ui/running_order/seat_bar.h"
#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int grid_minutes = 5;

bool is_same_part(const Seat& one, const Seat& other) {
    return one.client == other.client && one.part == other.part;
}

QString task_shown(const MorningNeeds& needs, const Seat& seat) {
    const std::string word = task_word(needs, seat);
    if (word == "set") return MorningChart::tr("set");
    if (word == "finish") return MorningChart::tr("finish");
    return MorningChart::tr("hair");
}

}  // namespace

MorningChart::MorningChart(QWidget* parent) : QWidget(parent) {
    setFont(text_font(TextRole::small));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize MorningChart::minimumSizeHint() const {
    return {ChartLayout::least_width(needs_, seats_, font()), std::max(1, layout_.height())};
}

void MorningChart::show_plan(const MorningNeeds& needs, const std::vector<Seat>& seats) {
    needs_ = needs;
    seats_ = seats;
    tried_.reset();
    held_.reset();
    make_bars();
    lay_out();
}

void MorningChart::show_now(std::optional<int> minute) {
    now_ = minute;
    update();
}

// A part that stays keeps its bar, and with it the keyboard.
void MorningChart::make_bars() {
    std::vector<SeatBar*> bars;
    for (const Seat& seat : seats_) {
        const auto kept = std::ranges::find_if(
            bars_, [&](const SeatBar* bar) { return bar && is_same_part(bar->seat(), seat); });
        bars.push_back(kept == bars_.end() ? make_bar() : std::exchange(*kept, nullptr));
        bars.back()->raise();  // Tab goes by the order of work
    }
    for (SeatBar* gone : bars_) {
        if (gone) gone->deleteLater();
    }
    bars_ = std::move(bars);
}

SeatBar* MorningChart::make_bar() {
    auto* bar = new SeatBar(this);
    connect(bar, &SeatBar::dragged, this, [this, bar](const QPoint& by) { drag(*bar, by); });
    connect(bar, &SeatBar::let_go, this, &MorningChart::let_go);
    connect(bar, &SeatBar::given_up, this, &MorningChart::give_up);
    connect(bar, &SeatBar::nudged, this,
            [this, bar](int minutes, int stylists) { nudge(*bar, minutes, stylists); });
    connect(bar, &SeatBar::clicked, this, [this, bar] { emit chosen(bar->seat().client); });
    connect(bar, &SeatBar::looked_at, this, [this, bar] { emit looked_at(bar); });
    bar->show();
    return bar;
}

void MorningChart::lay_out() {
    layout_ = ChartLayout(needs_, seats_, font(), width(), isRightToLeft());
    setFixedHeight(layout_.height());
    updateGeometry();
    show_bars();
    emit laid_out();
}

void MorningChart::show_bars() {
    const Consequences consequences = check_morning(needs_, standing());
    for (std::size_t i = 0; i < bars_.size(); ++i) {
        const Seat& seat = standing()[i];
        const auto client = std::ranges::find(needs_.clients, seat.client, &MorningClient::client);
        const auto place = static_cast<std::size_t>(client - needs_.clients.begin());
        const bool ready = ready_at(seat.client, standing()) == seat.ends;
        bars_[i]->show_face({seat, from_utf8(client->name), task_shown(needs_, seat),
                             ready ? consequences.late[place] : 0});
        bars_[i]->setGeometry(layout_.bar(seat));
    }
    update();
}

std::vector<Seat> MorningChart::moved_by(const Seat& seat, int to, int stylist) const {
    const int longest = minutes_of_a_day - (seat.ends - seat.begins);
    stylist = std::clamp(stylist, 0, static_cast<int>(needs_.stylists.size()) - 1);
    return moved_part(seats_, seat.client, seat.part, std::clamp(to, 0, longest), stylist);
}

void MorningChart::drag(const SeatBar& bar, const QPoint& by) {
    if (!held_) held_ = bar.seat();
    int to = held_->begins;
    if (std::abs(by.x()) >= QApplication::startDragDistance()) {
        to += layout_.minutes_in(by.x());
        to = (to + grid_minutes / 2) / grid_minutes * grid_minutes;
    }
    const int y = layout_.bar(*held_).center().y() + by.y();
    auto seats = moved_by(*held_, to, layout_.lane_at(y));
    if (tried_ == seats) return;
    tried_ = std::move(seats);
    show_bars();
    emit tried(*tried_);
}

void MorningChart::let_go() {
    if (!tried_) return;
    const ClientId client = held_->client;
    const auto seats = *std::exchange(tried_, std::nullopt);
    held_.reset();
    if (seats == seats_) {
        show_bars();
        emit given_up();
    } else {
        emit changed(seats, client);
    }
}

void MorningChart::give_up() {
    tried_.reset();
    held_.reset();
    show_bars();
    emit given_up();
}

void MorningChart::nudge(const SeatBar& bar, int minutes, int stylists) {
    const Seat& seat = bar.seat();
    const auto seats = moved_by(seat, seat.begins + minutes, seat.stylist + stylists);
    if (seats != seats_) emit changed(seats, seat.client);
}

void MorningChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    draw_chart_ground(painter, {layout_, needs_, standing(), now_}, palette());
}

void MorningChart::resizeEvent(QResizeEvent*) {
    lay_out();
}

}  // namespace quarterturn
