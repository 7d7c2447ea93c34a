#pragma once

#include <QDateEdit>
#include <QTimeEdit>

#include "indexer/record/time.h"

namespace quarterturn {

// A day, chosen from a calendar or typed.
QDateEdit* make_date_field(Date date);
Date date_in(const QDateEdit& field);

// A time of day.
QTimeEdit* make_time_field(LocalTime time);
LocalTime time_on(Date date, const QTimeEdit& field);

}  // namespace quarterturn
