#include "ui/consent/giver_fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>

#include "ui/consent/consent_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

GiverFields::GiverFields(QWidget* parent)
    : QWidget(parent),
      giver_(new QComboBox),
      age_(new QComboBox),
      guardian_(new QLineEdit),
      guardian_name_(make_quiet(tr("Name of her parent or guardian"))) {
    giver_->addItem(tr("She herself"));
    giver_->addItem(tr("Her parent or guardian"));
    age_->addItem(tr("not told"));
    for (const AgeBand age : all_age_bands) age_->addItem(shown(age));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space(3));
    grid->setVerticalSpacing(space(1));
    const auto add = [&](int row, int column, QLabel* name, QWidget* field) {
        field->setAccessibleName(name->text());
        name->setBuddy(field);
        grid->addWidget(name, row, column);
        grid->addWidget(field, row + 1, column);
    };
    add(0, 0, make_quiet(tr("Who said it")), giver_);
    add(0, 1, make_quiet(tr("How old she is")), age_);
    grid->addWidget(guardian_name_, 2, 0, 1, 2);
    grid->addWidget(guardian_, 3, 0, 1, 2);
    guardian_->setAccessibleName(guardian_name_->text());
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    connect(giver_, &QComboBox::currentIndexChanged, this, &GiverFields::show_guardian);
    // A child does not decide alone.
    connect(age_, &QComboBox::activated, this, [this](int index) {
        if (index > 0 && is_child(all_age_bands[static_cast<std::size_t>(index - 1)])) {
            giver_->setCurrentIndex(1);
        }
    });
    show_guardian();
}

void GiverFields::show_guardian() {
    const bool guardian = giver_->currentIndex() == 1;
    guardian_->setVisible(guardian);
    guardian_name_->setVisible(guardian);
}

void GiverFields::show_giver(std::optional<AgeBand> age, const ConsentEntry* before) {
    age_->setCurrentIndex(
        age ? static_cast<int>(std::ranges::find(all_age_bands, *age) - all_age_bands.begin()) + 1
            : 0);
    const bool guardian = before && before->giver == ConsentGiver::guardian;
    giver_->setCurrentIndex(guardian || (age && is_child(*age)) ? 1 : 0);
    guardian_->setText(guardian ? from_utf8(before->guardian) : QString());
}

void GiverFields::say_in(ConsentEntry& entry) const {
    const bool guardian = giver_->currentIndex() == 1;
    entry.giver = guardian ? ConsentGiver::guardian : ConsentGiver::herself;
    entry.guardian = guardian ? to_utf8(guardian_->text().trimmed()) : std::string();
    entry.age.reset();
    if (age_->currentIndex() > 0) {
        entry.age = all_age_bands[static_cast<std::size_t>(age_->currentIndex() - 1)];
    }
}

}  // namespace quarterturn
