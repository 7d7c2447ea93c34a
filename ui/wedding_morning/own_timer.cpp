#include "ui/wedding_morning/own_timer.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QSpinBox>

#include "indexer/rules/timers.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/timer_watch.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int offered_minutes = 15;

}  // namespace

OwnTimer::OwnTimer(const BoardType& type, QWidget* parent)
    : QFrame(parent),
      type_(type),
      name_(new QLineEdit),
      minutes_(new QSpinBox),
      sound_(new QCheckBox(tr("A sound at the end"))),
      flash_(new QCheckBox(tr("Flash at the end"))),
      notice_(new Notice) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    auto* row = new FlowLayout(type.px(0.6));
    column->addLayout(row);
    column->addWidget(notice_);
    const auto add = [&](QWidget* part) {
        part->setFont(type_.font(BoardRole::small));
        part->setMinimumHeight(type_.target());
        row->addWidget(part);
    };
    name_->setPlaceholderText(tr("What waits"));
    name_->setAccessibleName(tr("Name of the timer"));
    name_->setMinimumWidth(type.px(13));
    connect(name_, &QLineEdit::returnPressed, this, &OwnTimer::start);
    minutes_->setRange(1, most_timer_minutes);
    minutes_->setValue(offered_minutes);
    minutes_->setSuffix(tr(" min"));
    minutes_->setAccessibleName(tr("Minutes of the timer"));
    QPushButton* begin = make_next_button(tr("Start"));
    QPushButton* close = make_quiet_button(tr("Close"));
    for (QPushButton* button : {begin, close}) suit_board(*button, type_);
    connect(begin, &QPushButton::clicked, this, &OwnTimer::start);
    connect(close, &QPushButton::clicked, this, &OwnTimer::closed);
    for (QWidget* part : {static_cast<QWidget*>(name_), static_cast<QWidget*>(minutes_),
                          static_cast<QWidget*>(begin)}) {
        add(part);
    }
    add_wishes(*row);
    add(close);
    hide();
}

void OwnTimer::add_wishes(FlowLayout& row) {
    const TimerWishes wishes = remembered_timer_wishes();
    sound_->setChecked(wishes.sound);
    flash_->setChecked(wishes.flash);
    for (QCheckBox* wish : {sound_, flash_}) {
        wish->setFont(type_.font(BoardRole::small));
        wish->setMinimumHeight(type_.target());
        connect(wish, &QCheckBox::toggled, this, [this] {
            remember(TimerWishes{sound_->isChecked(), flash_->isChecked()});
        });
        row.addWidget(wish);
    }
}

void OwnTimer::ask() {
    notice_->say({});
    show();
    name_->setFocus(Qt::OtherFocusReason);
}

void OwnTimer::say(const QString& problem) {
    notice_->say(problem);
}

void OwnTimer::start() {
    minutes_->interpretText();
    emit wanted(name_->text().trimmed(), minutes_->value());
}

}  // namespace quarterturn
