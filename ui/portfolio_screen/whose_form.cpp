#include "ui/portfolio_screen/whose_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include "ui/consent/consent_words.h"
#include "ui/consent/optional_day.h"
#include "ui/portfolio_screen/photo_edits.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/narrow_choice.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

enum class Owner { not_said, own, photographer, somebody_else };
enum class Line { not_told, none, this_one };

Owner owner_in(const std::optional<Credit>& credit) {
    if (!credit) return Owner::not_said;
    switch (credit->whose) {
        case Whose::own:
            return Owner::own;
        case Whose::photographer:
            return Owner::photographer;
        case Whose::somebody_else:
            return Owner::somebody_else;
    }
    return Owner::not_said;
}

Line line_in(const Credit& credit) {
    if (!credit.line) return Line::not_told;
    return credit.line->empty() ? Line::none : Line::this_one;
}

}  // namespace

WhoseForm::WhoseForm(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      whose_(new QComboBox),
      licence_(new QWidget),
      name_(new QLineEdit),
      until_(new OptionalDay(tr("Licence ends"), usual_end(session.today()))),
      line_(new QComboBox),
      line_words_(new QLineEdit),
      whole_sitting_(new QCheckBox(tr("All photos of this sitting"))),
      save_(make_button(tr("Record whose it is"))),
      notice_(new Notice) {
    be_as_wide_as_there_is_room(*whose_);
    whose_->setAccessibleName(tr("Whose photo it is"));
    whose_->addItems({tr("not recorded"), tr("I took it myself"), tr("a photographer's"),
                      tr("somebody else's, never passed on")});
    build_licence();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(2));
    column->addWidget(whose_);
    column->addWidget(licence_);
    column->addWidget(whole_sitting_);
    column->addWidget(notice_);
    column->addWidget(save_, 0, Qt::AlignLeading);
    connect(whose_, &QComboBox::currentIndexChanged, this, &WhoseForm::show_what_is_asked);
    connect(line_, &QComboBox::currentIndexChanged, this, &WhoseForm::show_what_is_asked);
    connect(save_, &QPushButton::clicked, this, &WhoseForm::save);
}

void WhoseForm::build_licence() {
    name_->setPlaceholderText(tr("Name of the photographer"));
    name_->setAccessibleName(name_->placeholderText());
    be_as_wide_as_there_is_room(*line_);
    line_->setAccessibleName(tr("Which credit line is wanted"));
    line_->addItems(
        {tr("credit line not told"), tr("no credit line wanted"), tr("with this line")});
    line_words_->setPlaceholderText(tr("Photo: …"));
    line_words_->setAccessibleName(tr("The credit line"));
    auto* column = new QVBoxLayout(licence_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space(1));
    column->addWidget(name_);
    column->addWidget(make_quiet(tr("The licence covers")));
    for (const Use use : all_uses) {
        uses_[use] = new QCheckBox(capitalised_words(shown(use)));
        column->addWidget(uses_[use]);
    }
    column->addWidget(until_);
    column->addWidget(line_);
    column->addWidget(line_words_);
}

void WhoseForm::show_photo(const Photo& photo) {
    const auto credit = session_.library().credits().of(photo.id);
    const bool same = photo.id == photo_.id && credit == shown_;
    photo_ = photo;
    whole_sitting_->setVisible(photo.tags.sitting.has_value());
    if (same) return;
    shown_ = credit;
    whole_sitting_->setChecked(false);
    notice_->say({});
    show_credit(credit);
}

void WhoseForm::show_credit(const std::optional<Credit>& credit) {
    const Credit told = credit.value_or(Credit{});
    whose_->setCurrentIndex(static_cast<int>(owner_in(credit)));
    name_->setText(from_utf8(told.name));
    for (const auto& [use, box] : uses_) {
        box->setChecked(std::ranges::find(told.licensed, use) != told.licensed.end());
    }
    until_->show_day(told.until);
    line_->setCurrentIndex(static_cast<int>(line_in(told)));
    line_words_->setText(from_utf8(told.line.value_or("")));
    show_what_is_asked();
}

void WhoseForm::show_what_is_asked() {
    licence_->setVisible(static_cast<Owner>(whose_->currentIndex()) == Owner::photographer);
    line_words_->setVisible(static_cast<Line>(line_->currentIndex()) == Line::this_one);
}

std::optional<Credit> WhoseForm::credit() const {
    Credit credit;
    switch (static_cast<Owner>(whose_->currentIndex())) {
        case Owner::not_said:
            return std::nullopt;
        case Owner::own:
            return credit;
        case Owner::somebody_else:
            credit.whose = Whose::somebody_else;
            return credit;
        case Owner::photographer:
            break;
    }
    credit.whose = Whose::photographer;
    credit.name = to_utf8(name_->text().trimmed());
    for (const auto& [use, box] : uses_) {
        if (box->isChecked()) credit.licensed.push_back(use);
    }
    credit.until = until_->day();
    const auto line = static_cast<Line>(line_->currentIndex());
    if (line == Line::none) credit.line = "";
    const std::string words = to_utf8(line_words_->text().trimmed());
    if (line == Line::this_one && !words.empty()) credit.line = words;
    return credit;
}

std::vector<PhotoId> WhoseForm::photos() const {
    if (!whole_sitting_->isChecked() || !photo_.tags.sitting) return {photo_.id};
    std::vector<PhotoId> photos;
    for (const Photo& photo : session_.library().photos().of_sitting(*photo_.tags.sitting)) {
        photos.push_back(photo.id);
    }
    return photos;
}

void WhoseForm::save() {
    try {
        session_.change_records_or_throw(say_whose(photos(), credit()));
    } catch (const std::exception& problem) {
        return notice_->say(said_here(problem.what()));
    }
    notice_->say({});
    whole_sitting_->setChecked(false);
}

}  // namespace quarterturn
