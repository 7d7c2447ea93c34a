#include "ui/recipe/step_list.h"

#include <QApplication>

namespace quarterturn {

StepList::StepList(RecipeAids& aids)
    : ListOf({.add = {},
              .one = tr("step %1"),
              .remove = tr("Remove this step"),
              .removed = tr("removed a step")},
             [&aids] { return new StepCard(aids); }) {
    hide_adding();
}

void StepList::append(const Step& step) {
    std::vector<Step> steps = value();
    steps.push_back(step);
    show_value(steps);
    emit changed();
}

StepCard* StepList::card_in_hand() const {
    QWidget* focus = QApplication::focusWidget();
    for (Field* each : rows()) {
        if (focus && each->isAncestorOf(focus)) return static_cast<StepCard*>(each);
    }
    return nullptr;
}

QWidget* StepList::frame_of(Field& field) {
    auto& card = static_cast<StepCard&>(field);
    connect(&card, &StepCard::wants_move, this, [this, &card](int by) { move(card, by); });
    connect(&card, &StepCard::wants_double, this, [this, &card] { double_up(card); });
    connect(&card, &StepCard::wants_removal, this, [this, &card] { remove(card); });
    return &card;
}

void StepList::renumber() {
    RecordList::renumber();
    int number = 0;
    for (Field* each : rows()) static_cast<StepCard*>(each)->show_number(++number);
}

}  // namespace quarterturn
