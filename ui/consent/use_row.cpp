#include "ui/consent/use_row.h"

#include "ui/consent/consent_words.h"
#include "ui/consent/standing_mark.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int name_steps = 46;

int width_of_button(const QString& text) {
    const std::unique_ptr<QPushButton> button(make_button(text));
    button->ensurePolished();
    return button->sizeHint().width();
}

QString state_words(const StandingConsent& consent) {
    const QString word = capitalised_words(shown(consent.standing));
    if (!consent.entry) return word;
    if (consent.entry->said != ConsentSaid::granted) return word;
    return word + QStringLiteral(", ") + how_far_words(*consent.entry);
}

QString told_below(const StandingConsent& consent) {
    if (!consent.entry) return UseRow::tr("Nothing recorded means no.");
    QStringList words{capitalised_words(told_words(*consent.entry))};
    const int papers = static_cast<int>(consent.entry->papers.size());
    if (papers > 0) words << UseRow::tr("%n file(s) attached", nullptr, papers);
    return words.join(QStringLiteral("  ·  "));
}

}  // namespace

UseRow::UseRow(Use use, QWidget* parent)
    : QWidget(parent),
      use_(use),
      mark_(new StandingMark),
      name_(make_text(capitalised_words(shown(use)))),
      standing_(make_text({})),
      told_(make_quiet({})),
      grant_(make(tr("Grant…"), ConsentSaid::granted)),
      decline_(make(tr("Decline…"), ConsentSaid::declined)),
      withdraw_(make(tr("Withdraw…"), ConsentSaid::withdrawn)) {
    QFont bold = text_font(TextRole::body);
    bold.setBold(true);
    name_->setFont(bold);
    name_->setFixedWidth(space(name_steps));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, space(2), 0, space(2));
    row->setSpacing(space(3));
    row->addWidget(mark_, 0, Qt::AlignTop);
    row->addWidget(name_, 0, Qt::AlignTop);
    QVBoxLayout* words = make_column(0);
    words->addWidget(standing_);
    words->addWidget(told_);
    row->addLayout(words, 1);
    for (QPushButton* button : {grant_, decline_, withdraw_}) row->addWidget(button);
    make_as_wide_as_each_other();
}

// So that the buttons of all rows stand below each other.
void UseRow::make_as_wide_as_each_other() {
    int widest = 0;
    for (const QString& text :
         {tr("Change…"), grant_->text(), decline_->text(), withdraw_->text()}) {
        widest = std::max(widest, width_of_button(text));
    }
    for (QPushButton* button : {grant_, decline_, withdraw_}) button->setMinimumWidth(widest);
}

QPushButton* UseRow::make(const QString& text, ConsentSaid said) {
    QPushButton* button = make_button(text);
    //: what a button does, and the use it is for
    button->setAccessibleName(tr("%1: %2").arg(text, shown(use_)));
    connect(button, &QPushButton::clicked, this, [this, said] { emit asked(use_, said); });
    return button;
}

QPushButton& UseRow::button(ConsentSaid said) const {
    switch (said) {
        case ConsentSaid::granted:
            return *grant_;
        case ConsentSaid::declined:
            return *decline_;
        case ConsentSaid::withdrawn:
            return *withdraw_;
    }
    return *grant_;
}

// She withdraws what she has granted, declines what she was asked for the first time, and may
// grant it later all the same.
void UseRow::show_standing(const StandingConsent& consent) {
    mark_->show_standing(consent.standing);
    standing_->setText(state_words(consent));
    told_->setText(told_below(consent));
    const bool stands = consent.entry && consent.entry->said == ConsentSaid::granted;
    const bool had_keyboard = decline_->hasFocus() || withdraw_->hasFocus();
    decline_->setVisible(!consent.entry);
    withdraw_->setVisible(stands);
    grant_->setText(stands ? tr("Change…") : tr("Grant…"));
    grant_->setAccessibleName(tr("%1: %2").arg(grant_->text(), shown(use_)));
    if (had_keyboard) (stands ? withdraw_ : grant_)->setFocus();
}

}  // namespace quarterturn
