#include "ui/coming_up/date_block.h"

#include <QLocale>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int days_told_singly = 13;

QFont day_font() {
    QFont font = text_font(TextRole::title);
    font.setPointSizeF(font.pointSizeF() * 1.35);
    return font;
}

int days_between(Date from, Date to) {
    return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

int full_years(Date from, Date to) {
    const int years = static_cast<int>(to.year()) - static_cast<int>(from.year());
    return to.month() / to.day() < from.month() / from.day() ? years - 1 : years;
}

QString past_in_words(int days, int years) {
    if (years > 0) return DateBlock::tr("%n year(s) ago", nullptr, years);
    if (days <= days_told_singly) return DateBlock::tr("%n day(s) ago", nullptr, days);
    return DateBlock::tr("%n week(s) ago", nullptr, days / 7);
}

}  // namespace

DateBlock::DateBlock(Date date, Date today, QWidget* parent)
    : QWidget(parent), date_(date), today_(today) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(shown(date) + QStringLiteral(", ") + distance_in_words(date, today));
}

QSize DateBlock::sizeHint() const {
    const QFontMetrics words(text_font(TextRole::small));
    const QFontMetrics day(day_font());
    return {std::max(space(24), words.horizontalAdvance(distance_in_words(date_, today_)) + 8),
            3 * words.height() + day.height()};
}

void DateBlock::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QFontMetrics words(text_font(TextRole::small));
    const QFontMetrics day(day_font());
    int y = 0;
    const auto line = [&](const QString& text, const QFont& font, const QColor& colour) {
        painter.setFont(font);
        painter.setPen(colour);
        const int height = QFontMetrics(font).height();
        painter.drawText(QRect(0, y, width(), height), Qt::AlignHCenter | Qt::AlignVCenter, text);
        y += height;
    };
    const QDate date = to_qdate(date_);
    const QLocale locale;
    line(locale.toString(date, QStringLiteral("dddd")), text_font(TextRole::small),
         quiet_colour(palette()));
    line(locale.toString(date, QStringLiteral("d")), day_font(), ink_colour(palette()));
    line(locale.toString(date, QStringLiteral("MMM yyyy")), text_font(TextRole::small),
         ink_colour(palette()));
    line(distance_in_words(date_, today_), text_font(TextRole::small), accent_colour(palette()));
}

QString distance_in_words(Date date, Date today) {
    const int days = days_between(today, date);
    if (days == 0) return DateBlock::tr("today");
    if (days == 1) return DateBlock::tr("tomorrow");
    if (days == -1) return DateBlock::tr("yesterday");
    if (days < 0) return past_in_words(-days, full_years(date, today));
    if (days <= days_told_singly) return DateBlock::tr("in %n day(s)", nullptr, days);
    return DateBlock::tr("in %n week(s)", nullptr, days / 7);
}

}  // namespace quarterturn
