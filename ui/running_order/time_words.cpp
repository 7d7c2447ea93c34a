#include "ui/running_order/time_words.h"

#include "indexer/record/morning.h"
#include "ui/widgets/words.h"

namespace quarterturn {

TimeWords::TimeWords(const QString& name, QWidget* parent) : QLineEdit(parent) {
    setAccessibleName(name);
    connect(this, &QLineEdit::editingFinished, this, &TimeWords::read);
}

void TimeWords::show_time(std::optional<int> minute, const QString& otherwise) {
    shown_ = minute;
    setPlaceholderText(otherwise);
    setText(minute ? from_utf8(minute_text(*minute)) : QString());
}

void TimeWords::read() {
    QString words = text().trimmed();
    if (words.size() == 4 && words[1] == QLatin1Char(':')) words.prepend(QLatin1Char('0'));
    const auto minute = parse_minute(to_utf8(words));
    if (!words.isEmpty() && !minute) {
        emit not_understood(tr("“%1” is no time of day: write it as in 07:40.").arg(words));
        return;
    }
    emit not_understood({});
    if (minute == shown_) return;
    shown_ = minute;
    emit given(minute);
}

}  // namespace quarterturn
