#include "ui/widgets/date_field.h"

#include <QCalendarWidget>
#include <QComboBox>
#include <QLocale>

#include "ui/widgets/words.h"

namespace quarterturn {

namespace {

void make_as_tall_as_others(QWidget& field) {
    field.setMinimumHeight(QComboBox().sizeHint().height());
}

}  // namespace

QDateEdit* make_date_field(Date date) {
    auto* field = new QDateEdit(to_qdate(date));
    field->setCalendarPopup(true);
    make_as_tall_as_others(*field);
    field->setDisplayFormat(QLocale().dateFormat(QLocale::LongFormat));
    field->calendarWidget()->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    field->calendarWidget()->setGridVisible(false);
    return field;
}

Date date_in(const QDateEdit& field) {
    return from_qdate(field.date());
}

QTimeEdit* make_time_field(LocalTime time) {
    const auto since_midnight = time - std::chrono::floor<std::chrono::days>(time);
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(since_midnight).count();
    auto* field = new QTimeEdit(QTime::fromMSecsSinceStartOfDay(static_cast<int>(seconds) * 1000));
    field->setDisplayFormat(clock_format());
    make_as_tall_as_others(*field);
    return field;
}

LocalTime time_on(Date date, const QTimeEdit& field) {
    return LocalTime(std::chrono::local_days(date)) +
           std::chrono::milliseconds(field.time().msecsSinceStartOfDay());
}

}  // namespace quarterturn
