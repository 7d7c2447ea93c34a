#include "ui/wedding_morning/timer_strip.h"

#include "ui/wedding_morning/timer_pill.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

TimerStrip::TimerStrip(const TimerWatch& watch, const BoardType& type, QWidget* parent)
    : QWidget(parent), watch_(watch), type_(type), row_(new FlowLayout(type.px(0.4), this)) {
    setAccessibleName(tr("Timers"));
    connect(&watch, &TimerWatch::looked, this, &TimerStrip::show_time);
    show_time();
}

void TimerStrip::build() {
    empty_layout(row_);
    pills_.clear();
    for (const Timer& timer : watch_.timers()) {
        auto* pill = new TimerPill(timer, type_);
        connect(pill, &TimerPill::put_away, this, [this, timer] { emit put_away(timer); });
        row_->addWidget(pill);
        pills_.push_back(pill);
    }
    setVisible(!pills_.empty());
}

void TimerStrip::show_time() {
    if (!std::ranges::equal(pills_, watch_.timers(), {}, &TimerPill::timer)) build();
    for (TimerPill* pill : pills_) pill->show_time(watch_.now(), watch_.lit());
    if (pills_.empty()) hide();
}

}  // namespace quarterturn
