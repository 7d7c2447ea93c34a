#include "ui/consent/optional_day.h"

#include <QCheckBox>

#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::chrono::years usual_time{2};

}  // namespace

Date usual_end(Date today) {
    const Date later = today + usual_time;
    return later.ok() ? later : later.year() / later.month() / std::chrono::last;
}

OptionalDay::OptionalDay(const QString& name, Date proposed, QWidget* parent)
    : QWidget(parent), has_(new QCheckBox(name)), day_(make_date_field(proposed)) {
    day_->setAccessibleName(name);
    day_->setEnabled(false);
    auto* row = new FlowLayout(space(2), this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(has_);
    row->addWidget(day_);
    connect(has_, &QCheckBox::toggled, day_, &QWidget::setEnabled);
}

std::optional<Date> OptionalDay::day() const {
    return has_->isChecked() ? std::optional(date_in(*day_)) : std::nullopt;
}

void OptionalDay::show_day(std::optional<Date> day) {
    has_->setChecked(day.has_value());
    if (day) day_->setDate(to_qdate(*day));
}

}  // namespace quarterturn
