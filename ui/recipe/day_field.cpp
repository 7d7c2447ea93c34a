#include "ui/recipe/day_field.h"

#include <QDateEdit>
#include <QSignalBlocker>

#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

DayField::DayField(Date today, QWidget* parent)
    : Field(parent),
      add_(make_button(tr("Say when…"))),
      day_(make_date_field(today)),
      remove_(make_quiet_button(tr("No day"))) {
    auto* row = new FlowLayout(space(2));
    for (QWidget* part : {static_cast<QWidget*>(add_), static_cast<QWidget*>(day_),
                          static_cast<QWidget*>(remove_)}) {
        row->addWidget(part);
    }
    setLayout(row);
    connect(add_, &QPushButton::clicked, this, [this, today] {
        day_->setDate(to_qdate(today));
        say(true);
        day_->setFocus();
        emit changed();
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        say(false);
        add_->setFocus();
        emit changed();
    });
    connect(day_, &QDateEdit::dateChanged, this, &Field::changed);
    say(false);
}

void DayField::say(bool said) {
    said_ = said;
    add_->setVisible(!said);
    day_->setVisible(said);
    remove_->setVisible(said);
    setFocusProxy(said ? static_cast<QWidget*>(day_) : add_);
}

void DayField::name_it(const QString& name) {
    day_->setAccessibleName(name);
    //: what a day is asked for, and the button that names one
    add_->setAccessibleName(tr("%1: say when").arg(name));
    remove_->setAccessibleName(tr("%1: no day").arg(name));
}

void DayField::show_value(std::optional<Date> day) {
    if (value() == day) return;
    const QSignalBlocker silent(this);
    if (day) day_->setDate(to_qdate(*day));
    say(day.has_value());
}

std::optional<Date> DayField::value() const {
    return said_ ? std::optional(date_in(*day_)) : std::nullopt;
}

}  // namespace quarterturn
