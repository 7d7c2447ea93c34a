#include "ui/sign_off/waiving.h"

namespace quarterturn {

Edit waiving(LookId look, const Waiver& waiver) {
    return {"waived " + shot_text(waiver.shot),
            [=](Library& library) { library.looks().waive(look, waiver); }};
}

Edit taking_waiver_back(LookId look, const Shot& shot) {
    return {"took back the waiver of " + shot_text(shot),
            [=](Library& library) { library.looks().take_back_waiver(look, shot); }};
}

}  // namespace quarterturn
