#include "indexer/erasure/retention.h"

#include <algorithm>

#include "indexer/erasure/erase.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

void take_later(std::optional<Date>& last, Date day) {
    if (!last || day > *last) last = day;
}

std::optional<Date> last_day(const std::vector<Wedding>& weddings, const ErasurePlan& plan) {
    std::optional<Date> last;
    for (const Sitting& sitting : plan.sittings) take_later(last, date_of(sitting.ends));
    for (const Photo& photo : plan.photos) {
        if (photo.moment) take_later(last, date_of(*photo.moment));
    }
    for (const Wedding& wedding : weddings) {
        const bool of_party =
            !plan.only && std::ranges::any_of(wedding.party, [&](const PartyMember& member) {
                return member.client == plan.client.id;
            });
        const bool of_look = std::ranges::any_of(
            plan.looks, [&](const Look& look) { return look.wedding == wedding.id; });
        if (of_party || of_look) take_later(last, wedding.date);
    }
    return last;
}

// The days of a look's sittings, though they do not go with it.
std::optional<Date> last_day_of_look(Library& library, const std::vector<Wedding>& weddings,
                                     ErasurePlan plan) {
    for (const SittingId id : plan.only->sittings) {
        if (auto sitting = library.sittings().find(id)) plan.sittings.push_back(*sitting);
    }
    return last_day(weddings, plan);
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
    const std::vector<Wedding> weddings = library.weddings().all();
    const auto add_if_past = [&](const ErasurePlan& plan, std::optional<Date> last) {
        if (!last || *last >= oldest) return false;
        past.push_back({plan.client, plan.only, *last, plan.looks.size(), plan.photos.size()});
        return true;
    };
    for (const Client& client : library.clients().all()) {
        const ErasurePlan plan = plan_erasure(library, client.id, SharedPhotos::stay);
        if (add_if_past(plan, last_day(weddings, plan))) continue;
        for (const Look& look : plan.looks) {
            const ErasurePlan only = plan_look_erasure(library, look.id);
            add_if_past(only, last_day_of_look(library, weddings, only));
        }
    }
    std::ranges::stable_sort(past, {}, &PastKeeping::last);
    return past;
}

}  // namespace quarterturn
