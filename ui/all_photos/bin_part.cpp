#include "ui/all_photos/bin_part.h"

#include <QKeyEvent>

#include "indexer/erasure/empty_bin.h"
#include "indexer/intake/bin.h"
#include "ui/shell/session.h"
#include "ui/widgets/form_buttons.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

int photos_of(const std::vector<LeavingBin>& leaving) {
    int photos = 0;
    for (const LeavingBin& each : leaving) photos += each.photos;
    return photos;
}

QString photo_count(int photos) {
    return BinPart::tr("%n photo(s)", nullptr, photos);
}

QString leaving_words(const std::vector<LeavingBin>& leaving) {
    if (leaving.empty()) return {};
    QStringList days;
    for (const LeavingBin& each : leaving) {
        //: photos, and the day they go for good
        days << BinPart::tr("%1 on %2").arg(photo_count(each.photos), shown(each.on));
    }
    return BinPart::tr("Gone for good: %1.").arg(days.join(QStringLiteral("; ")));
}

}  // namespace

BinPart::BinPart(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      leaving_(make_quiet({})),
      move_(make_quiet_button({})),
      empty_(make_quiet_button(tr("Empty the bin…"))),
      question_(build_question()) {
    connect(move_, &QPushButton::clicked, this, &BinPart::move_asked);
    connect(empty_, &QPushButton::clicked, this, &BinPart::ask);
    QHBoxLayout* row = make_row(4);
    row->addWidget(leaving_, 1);
    row->addStretch();
    row->addWidget(move_);
    row->addWidget(empty_);
    QVBoxLayout* all = make_column();
    all->addLayout(row);
    all->addWidget(question_);
    setLayout(all);
    question_->hide();
}

QWidget* BinPart::build_question() {
    auto* question = new QWidget;
    asked_ = make_text({});
    buttons_ = new FormButtons(tr("Empty the bin"));
    connect(buttons_, &FormButtons::kept, this, &BinPart::empty);
    connect(buttons_, &FormButtons::left, this, [this] {
        question_->hide();
        empty_->setFocus(Qt::OtherFocusReason);
    });
    QVBoxLayout* column = make_column();
    column->addWidget(asked_);
    column->addWidget(buttons_);
    question->setLayout(column);
    return question;
}

void BinPart::show_bin(bool in_bin, std::optional<PhotoId> chosen) {
    in_bin_ = in_bin;
    chosen_ = chosen;
    const auto leaving = in_bin ? leaving_bin(session_.library()) : std::vector<LeavingBin>{};
    leaving_->setText(leaving_words(leaving));
    leaving_->setVisible(!leaving.empty());
    move_->setText(in_bin ? tr("Take it out of the bin (Enter)")
                          : tr("Put it into the bin (Delete)"));
    move_->setVisible(chosen.has_value());
    empty_->setVisible(!leaving.empty());
    if (leaving.empty()) question_->hide();
    setVisible(chosen || !leaving.empty());
}

void BinPart::move_chosen() {
    if (!chosen_) return;
    session_.change_photos([&](Library& library) {
        in_bin_ ? take_out_of_bin(library, {{*chosen_}})
                : put_into_bin(library, {{*chosen_}}, session_.today());
    });
}

void BinPart::ask() {
    session_.attempt([this] {
        const int photos = photos_of(leaving_bin(session_.library()));
        asked_->setText(tr("%1 of the bin will be gone for good now, with tags and small pictures. "
                           "This cannot be undone.")
                            .arg(photo_count(photos)));
        question_->show();
        // The one of the two that changes nothing.
        buttons_->findChildren<QPushButton*>().constLast()->setFocus(Qt::OtherFocusReason);
    });
}

void BinPart::empty() {
    question_->hide();
    if (session_.work()) {
        return session_.say(
            tr("Something else is at work in the library: wait until it has ended, and press "
               "again."));
    }
    session_.start<BinEmptied>(
        [](Library& library, Job&) { return empty_bin(library); },
        [&session = session_](const BinEmptied& emptied) {
            session.forget_past();
            session.say_with(tr("Gone for good: %1.").arg(photo_count(emptied.gone)), emptied.left);
        });
}

void BinPart::keyPressEvent(QKeyEvent* event) {
    if (question_->isHidden() || !buttons_->take_key(*event)) QWidget::keyPressEvent(event);
}

}  // namespace quarterturn
