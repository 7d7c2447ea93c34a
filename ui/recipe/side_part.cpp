#include "ui/recipe/side_part.h"

#include "ui/recipe/marked_button.h"
#include "ui/recipe/recipe_in_hand.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

SidePart::SidePart(RecipeInHand& in_hand, QWidget* parent)
    : QWidget(parent),
      in_hand_(in_hand),
      save_(make_next_button(tr("Save this recipe"))),
      kept_(make_text({})),
      back_(make_quiet_button(tr("Back to what was saved"))),
      verdict_(make_quiet({})),
      places_(make_column(1)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(4), space(6), space(6), space(4));
    column->setSpacing(space(2));
    save_->setToolTip(tr("Ctrl+S"));
    column->addWidget(save_);
    column->addWidget(kept_);
    column->addWidget(back_, 0, Qt::AlignLeading);
    column->addWidget(make_hairline());
    column->addWidget(make_heading(tr("The recipe check")));
    column->addWidget(verdict_);
    column->addLayout(places_);
    column->addStretch();
    connect(save_, &QPushButton::clicked, &in_hand_, &RecipeInHand::save);
    connect(back_, &QPushButton::clicked, &in_hand_, &RecipeInHand::go_back_to_saved);
}

void SidePart::show_kept() {
    const bool draft = in_hand_.kept_at() || in_hand_.waits_to_be_kept();
    if (in_hand_.waits_to_be_kept()) {
        kept_->setText(tr("Not kept yet …"));
    } else if (in_hand_.kept_at()) {
        kept_->setText(tr("Kept as a draft at %1. It is not a revision until you save it.")
                           .arg(clock_shown(*in_hand_.kept_at())));
    } else {
        kept_->setText(in_hand_.saved() ? tr("All of it is saved.")
                                        : tr("Nothing is written yet. Whatever you write is kept "
                                             "as a draft by itself."));
    }
    back_->setVisible(draft && in_hand_.saved().has_value());
}

void SidePart::show_findings(const Recipe& recipe, const std::vector<RecipeFinding>& findings) {
    if (shown_ != findings) build_places(findings);
    for (std::size_t i = 0; i < place_buttons_.size(); ++i) {
        const bool written = !lines_at(all_recipe_places[i], recipe).isEmpty();
        place_buttons_[i]->show_mark(written ? Mark::written : Mark::empty);
        const QString name = shown(all_recipe_places[i]);
        place_buttons_[i]->setAccessibleName(written ? tr("%1, written").arg(name)
                                                     : tr("%1, nothing yet").arg(name));
    }
}

void SidePart::build_places(const std::vector<RecipeFinding>& findings) {
    shown_ = findings;
    empty_layout(places_);
    place_buttons_.clear();
    const auto bars = std::ranges::count(findings, Weight::bars_sign_off, &RecipeFinding::weight);
    verdict_->setText(findings.empty() ? tr("The recipe says all that is needed.")
                      : bars == 0      ? tr("The recipe says what sign-off needs.")
                                       : tr("%n thing(s) stand in the way of sign-off.", nullptr,
                                            static_cast<int>(bars)));
    for (const RecipePlace place : all_recipe_places) {
        auto* button = new MarkedButton(Mark::empty, shown(place));
        connect(button, &MarkedButton::clicked, this, [this, place] { emit asked_for(place); });
        places_->addWidget(button);
        place_buttons_.push_back(button);
        for (const RecipeFinding& finding : findings) {
            if (place_of_rule(finding.rule) == place) add_finding(finding, place);
        }
    }
    for (const RecipeFinding& finding : findings) {
        if (!place_of_rule(finding.rule)) add_finding(finding, std::nullopt);
    }
}

void SidePart::add_finding(const RecipeFinding& finding, std::optional<RecipePlace> place) {
    const bool bars = finding.weight == Weight::bars_sign_off;
    const QString sentence = from_utf8(finding.sentence);
    auto* words = new MarkedButton(
        bars ? Mark::bar : Mark::warning,
        bars ? tr("In the way: %1").arg(sentence) : tr("To think about: %1").arg(sentence));
    words->setAccessibleName(words->text());
    QHBoxLayout* inset = make_row();
    inset->setContentsMargins(space(4), 0, 0, 0);
    inset->addWidget(words);
    places_->addLayout(inset);
    connect(words, &MarkedButton::clicked, this,
            [this, place] { emit asked_for(place.value_or(RecipePlace::cautions)); });
}

}  // namespace quarterturn
