#include "ui/coming_up/next_steps.h"

#include <QCoreApplication>

namespace quarterturn {
namespace {

QString step_words(const char* text) {
    return QCoreApplication::translate("next_steps", text);
}

Moment moment_of(NextStep step) {
    switch (step) {
        case NextStep::bring_photos_in:
            return Moment::bringing_in;
        case NextStep::go_round_the_head:
            return Moment::round_the_head;
        case NextStep::write_recipe:
            return Moment::recipe;
        case NextStep::sign_off:
        case NextStep::nothing:
            return Moment::sign_off;
    }
    return Moment::coming_up;
}

}  // namespace

QString step_text(NextStep step) {
    switch (step) {
        case NextStep::bring_photos_in:
            return step_words(QT_TRANSLATE_NOOP("next_steps", "Bring photos in"));
        case NextStep::go_round_the_head:
            return step_words(QT_TRANSLATE_NOOP("next_steps", "Go round the head"));
        case NextStep::write_recipe:
            return step_words(QT_TRANSLATE_NOOP("next_steps", "Write the recipe"));
        case NextStep::sign_off:
            return step_words(QT_TRANSLATE_NOOP("next_steps", "Sign off"));
        case NextStep::nothing:
            return step_words(QT_TRANSLATE_NOOP("next_steps", "See what was signed"));
    }
    return {};
}

Place step_place(NextStep step, const Look& look, const std::optional<Shot>& shot) {
    Place place{.moment = moment_of(step)};
    place.client = look.client;
    place.wedding = look.wedding;
    place.look = look.id;
    if (!look.sittings.empty()) place.sitting = look.sittings.back();
    place.shot = shot;
    return place;
}

}  // namespace quarterturn
