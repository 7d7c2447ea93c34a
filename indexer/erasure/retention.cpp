#include "indexer/erasure/retention.h"

#include <algorithm>

#include "indexer/erasure/erase.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

void take_later(std::optional<Date>& last, Date day) {
    if (!last || day > *last) last = day;
}

std::optional<Date> last_day(Library& library, const ErasurePlan& plan) {
    std::optional<Date> last;
    for (const Sitting& sitting : plan.sittings) take_later(last, date_of(sitting.ends));
    for (const Photo& photo : plan.photos) {
        if (photo.moment) take_later(last, date_of(*photo.moment));
    }
    for (const Wedding& wedding : library.weddings().all()) {
        const bool of_party = std::ranges::any_of(wedding.party, [&](const PartyMember& member) {
            return member.client == plan.client.id;
        });
        const bool of_look = std::ranges::any_of(
            plan.looks, [&](const Look& look) { return look.wedding == wedding.id; });
        if (of_party || of_look) take_later(last, wedding.date);
    }
    return last;
}

// The 29th of February has its day before in other years.
Date years_before(Date day, int years) {
    const Date then = day - std::chrono::years(years);
    return then.ok() ? then : Date{then.year(), then.month(), std::chrono::day(28)};
}

}  // namespace

std::vector<PastKeeping> past_keeping(Library& library, Date today) {
    std::vector<PastKeeping> past;
    const auto years = keep_looks_years(library.settings());
    if (!years) return past;
    const Date oldest = years_before(today, *years);
    for (const Client& client : library.clients().all()) {
        const ErasurePlan plan = plan_erasure(library, client.id, SharedPhotos::stay);
        const auto last = last_day(library, plan);
        if (last && *last < oldest) {
            past.push_back({client, *last, plan.looks.size(), plan.photos.size()});
        }
    }
    std::ranges::stable_sort(past, {}, &PastKeeping::last);
    return past;
}

}  // namespace quarterturn
