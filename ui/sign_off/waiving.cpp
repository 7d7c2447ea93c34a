#include "ui/sign_off/waiving.h"

#include <algorithm>

namespace quarterturn {
namespace {

using Put = std::function<void(Library&)>;

Put putting(LookId look, const Shot& shot, const std::optional<Waiver>& waiver) {
    return [=](Library& library) {
        if (waiver) {
            library.looks().waive(look, *waiver);
        } else {
            library.looks().take_back_waiver(look, shot);
        }
    };
}

Put putting_as_it_is(Library& library, LookId look, const Shot& shot) {
    const auto waivers = library.looks().waivers(look);
    const auto found =
        std::ranges::find_if(waivers, [&](const Waiver& waiver) { return waiver.shot == shot; });
    return putting(look, shot,
                   found == waivers.end() ? std::nullopt : std::optional<Waiver>(*found));
}

}  // namespace

Edit waiving(Library& library, LookId look, const Waiver& waiver) {
    return {"waived " + shot_text(waiver.shot), putting(look, waiver.shot, waiver),
            putting_as_it_is(library, look, waiver.shot)};
}

Edit taking_waiver_back(Library& library, LookId look, const Shot& shot) {
    return {"took back the waiver of " + shot_text(shot), putting(look, shot, std::nullopt),
            putting_as_it_is(library, look, shot)};
}

}  // namespace quarterturn
