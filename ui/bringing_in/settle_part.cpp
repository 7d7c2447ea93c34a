#include "ui/bringing_in/settle_part.h"

#include "ui/bringing_in/clock_part.h"
#include "ui/bringing_in/unplaced_part.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

SettlePart::SettlePart(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), parts_(make_column(4)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, space(2), 0, 0);
    column->setSpacing(space(4));
    column->addWidget(make_heading(tr("For you to settle")));
    column->addLayout(parts_);
    hide();
}

SettlePart::~SettlePart() = default;

void SettlePart::look_again() {
    if (job_) {
        once_more_ = true;
        return;
    }
    job_ = std::make_unique<Job>(
        session_.library().folder(), session_.disk(), [this](Library& library, Job&) {
            return std::function<void()>(
                [this, waits = to_settle(library)] { show_what_waits(waits); });
        });
    connect(job_.get(), &Job::failed, &session_, &Session::said);
    connect(job_.get(), &Job::ended, this, [this] {
        job_.release()->deleteLater();
        if (std::exchange(once_more_, false)) look_again();
    });
}

void SettlePart::show_what_waits(const ToSettle& waits) {
    if (waits == shown_) return;  // what she has chosen stays chosen
    shown_ = waits;
    empty_layout(parts_);
    for (const DoubtfulClock& clock : waits.clocks) {
        parts_->addWidget(new ClockPart(session_, clock));
    }
    for (const UnplacedGroup& group : waits.groups) {
        parts_->addWidget(new UnplacedPart(session_, group));
    }
    setVisible(parts_->count() > 0);
}

}  // namespace quarterturn
