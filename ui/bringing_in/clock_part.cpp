#include "ui/bringing_in/clock_part.h"

#include "ui/bringing_in/import_words.h"
#include "ui/bringing_in/photo_picker.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString set_text(const ClockShift& shift) {
    const QString size = from_utf8(shift_size_text(shift.shift));
    return shift.shift < shift.shift.zero() ? ClockPart::tr("Set its photos %1 back").arg(size)
                                            : ClockPart::tr("Set its photos %1 forward").arg(size);
}

}  // namespace

ClockPart::ClockPart(Session& session, const DoubtfulClock& clock, QWidget* parent)
    : QFrame(parent),
      session_(session),
      clock_(clock),
      notice_(new Notice),
      pair_choice_(make_column(2)) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(6), space(5), space(6), space(5));
    column->setSpacing(space(3));
    column->addWidget(make_heading(tr("The clock of %1 seems off").arg(shown(clock.device))));
    column->addWidget(make_text(from_utf8(clock.shift.because)));
    add_pictures(*column);
    auto* buttons = new FlowLayout(space(2));
    QPushButton* set = make_next_button(set_text(clock.shift));
    connect(set, &QPushButton::clicked, this, [this] { set_clock(clock_.shift); });
    buttons->addWidget(set);
    if (!clock.of_others.empty()) {
        QPushButton* pair = make_button(tr("Choose two photos of one moment"));
        connect(pair, &QPushButton::clicked, this, &ClockPart::offer_pair);
        buttons->addWidget(pair);
    }
    QPushButton* right_already = make_quiet_button(tr("Its clock is right"));
    connect(right_already, &QPushButton::clicked, this, &ClockPart::decline);
    buttons->addWidget(right_already);
    column->addLayout(buttons);
    column->addWidget(notice_);
    column->addLayout(pair_choice_);
}

void ClockPart::add_pictures(QVBoxLayout& column) {
    if (!clock_.own || !clock_.beside) return;
    column.addWidget(make_quiet(tr("Then these two would be of about the same moment:")));
    QHBoxLayout* row = make_row(4);
    for (const Photo& photo : {*clock_.own, *clock_.beside}) {
        row->addWidget(new PhotoPicker(session_, {photo}, PhotoPicker::Choice::none));
    }
    row->addStretch(1);
    column.addLayout(row);
}

void ClockPart::offer_pair() {
    if (wrong_) return;
    wrong_ = new PhotoPicker(session_, clock_.of_device, PhotoPicker::Choice::one);
    right_ = new PhotoPicker(session_, clock_.of_others, PhotoPicker::Choice::one);
    set_pair_ = make_next_button(tr("These two show the same moment"));
    set_pair_->setEnabled(false);
    const auto enable = [this] {
        set_pair_->setEnabled(!wrong_->chosen().empty() && !right_->chosen().empty());
    };
    for (PhotoPicker* picker : {wrong_, right_}) {
        connect(picker, &PhotoPicker::choice_changed, this, enable);
    }
    connect(set_pair_, &QPushButton::clicked, this, &ClockPart::set_by_pair);
    pair_choice_->addWidget(make_quiet(tr("By %1:").arg(shown(clock_.device))));
    pair_choice_->addWidget(wrong_);
    pair_choice_->addWidget(make_quiet(tr("By another device, whose clock is right:")));
    pair_choice_->addWidget(right_);
    pair_choice_->addWidget(set_pair_, 0, Qt::AlignLeading);
}

void ClockPart::set_clock(const ClockShift& shift) {
    session_.change_photos([shift](Library& library) { apply_clock_shift(library, shift); });
}

void ClockPart::decline() {
    const ClockShift shift = clock_.shift;
    session_.change_records({to_utf8(tr("left the clock of %1 as it is").arg(shown(clock_.device))),
                             [shift](Library& library) { decline_clock_shift(library, shift); }});
}

void ClockPart::set_by_pair() {
    try {
        set_clock(clock_shift_from_pair(session_.library(), wrong_->chosen().front(),
                                        right_->chosen().front()));
    } catch (const std::exception& problem) {
        notice_->say(said_here(problem.what()));
    }
}

}  // namespace quarterturn
