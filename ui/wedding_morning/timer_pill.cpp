#include "ui/wedding_morning/timer_pill.h"

#include <QAccessible>
#include <QPainter>

#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr double dial_side = 1.6;  // bodies
constexpr double dial_gap = 0.4;
constexpr double pill_gap = 0.35;
constexpr double widest_name = 16;
constexpr int whole_turn = 360 * 16;

// Never wrapped by itself.
QLabel* make_line(const QString& text, const QFont& font) {
    QLabel* line = make_text(text);
    line->setFont(font);
    line->setWordWrap(false);
    return line;
}

}  // namespace

TimerPill::TimerPill(const Timer& timer, const BoardType& type, QWidget* parent)
    : QFrame(parent),
      timer_(timer),
      type_(type),
      name_(make_line(
          on_lines(from_utf8(timer.name), type.font(BoardRole::small), type.px(widest_name)),
          type.font(BoardRole::small))),
      time_(make_line({}, type.font(BoardRole::heading))),
      away_(make_button({})) {
    suit_board(*away_, type_);
    connect(away_, &QPushButton::clicked, this, &TimerPill::put_away);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(type.px(0.4), type.px(0.25), type.px(0.4), type.px(0.25));
    row->setSpacing(type.px(pill_gap));
    row->addSpacing(type.px(dial_side + dial_gap));
    row->addWidget(name_);
    row->addWidget(time_);
    row->addWidget(away_);
}

QString TimerPill::time_said() const {
    return time_->text();
}

void TimerPill::show_time(std::int64_t now, bool lit) {
    const TimerState before = std::exchange(state_, timer_state(timer_, now));
    const QString left = from_utf8(time_left_text(timer_, now));
    time_->setText(state_ == TimerState::last_minute ? tr("last minute, %1").arg(left) : left);
    const auto whole = static_cast<double>(std::max<std::int64_t>(1, timer_.ends - timer_.begins));
    share_left_ = std::clamp(static_cast<double>(time_left(timer_, now)) / whole, 0.0, 1.0);
    filled_ = state_ == TimerState::over && lit;
    const QString name = from_utf8(timer_.name);
    away_->setText(state_ == TimerState::over ? tr("Seen") : tr("Stop"));
    away_->setAccessibleName(
        (state_ == TimerState::over ? tr("Seen: %1") : tr("Stop: %1")).arg(name));
    setAccessibleName(tr("%1: %2").arg(name, time_->text()));
    colour_words();
    if (state_ == TimerState::over && before != TimerState::over) say_when_it_ends();
    update();
}

void TimerPill::say_when_it_ends() {
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void TimerPill::colour_words() {
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText,
                     filled_ ? on_accent_colour(colours) : ink_colour(colours));
    name_->setPalette(colours);
    time_->setPalette(colours);
}

void TimerPill::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool pressing = state_ != TimerState::running;
    painter.setPen(
        QPen(pressing ? accent_colour(palette()) : outline_colour(palette()), pressing ? 4 : 1.5));
    painter.setBrush(filled_ ? accent_colour(palette()) : card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 12, 12);
    const double side = type_.px(dial_side);
    const double x = type_.px(0.4);
    const QRectF dial(isRightToLeft() ? width() - x - side : x, (height() - side) / 2, side, side);
    const QColor ink = filled_ ? on_accent_colour(palette()) : accent_colour(palette());
    painter.setPen(QPen(ink, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(dial);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawPie(dial.adjusted(4, 4, -4, -4), whole_turn / 4, qRound(share_left_ * whole_turn));
}

}  // namespace quarterturn
