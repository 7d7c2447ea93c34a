#include "indexer/looks/as_made.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <ranges>
#include <set>

#include "indexer/rules/coverage.h"
#include "indexer/rules/recipe_hints.h"

namespace quarterturn {
namespace {

struct PhotosOfLook {
    std::vector<Photo> sealed;  // agreed, and signed off
    std::vector<Photo> agreed;
    std::vector<Photo> made;
};

std::set<PhotoId> sealed_photos(const std::optional<SignOff>& sign_off) {
    std::set<PhotoId> sealed;
    if (!sign_off) return sealed;
    for (const SealedPhoto& photo : sign_off->seal.photos) sealed.insert(photo.photo);
    return sealed;
}

// What was taken at no sitting may be from any day, and is left out.
PhotosOfLook photos_of(Library& library, const Wedding& wedding, const Look& look,
                       const std::optional<SignOff>& sign_off) {
    const auto sealed = sealed_photos(sign_off);
    std::map<SittingId, std::optional<Sitting>> sittings;
    PhotosOfLook photos;
    for (const Photo& photo : library.photos().around_look(look)) {
        if (photo.tags.look != look.id || !photo.tags.sitting) continue;
        const auto [at, is_new] = sittings.try_emplace(*photo.tags.sitting);
        if (is_new) at->second = library.sittings().find(*photo.tags.sitting);
        if (!at->second) continue;
        if (is_on_the_day(*at->second, wedding)) {
            photos.made.push_back(photo);
        } else if (at->second->kind != SittingKind::wedding_day) {
            photos.agreed.push_back(photo);
            if (sealed.contains(photo.id)) photos.sealed.push_back(photo);
        }
    }
    return photos;
}

std::optional<Photo> best_after(const Look& look, Angle angle, const std::vector<Photo>& photos) {
    const auto best = photos_of_shot(look, {Stage::after, angle}, photos);
    return best.empty() ? std::nullopt : std::optional(best.front());
}

std::vector<AgreedPair> pairs_of(const Look& look, const PhotosOfLook& photos) {
    std::vector<AgreedPair> pairs;
    for (const Angle angle : all_angles) {
        AgreedPair pair{angle, best_after(look, angle, photos.sealed),
                        best_after(look, angle, photos.made)};
        if (!pair.agreed) pair.agreed = best_after(look, angle, photos.agreed);
        const bool quarter = std::ranges::find(quarter_angles, angle) != quarter_angles.end();
        if (quarter || pair.agreed || pair.made) pairs.push_back(std::move(pair));
    }
    return pairs;
}

// The recipe as it was sealed and the newest.
void compare_recipes(Library& library, LookAsMade& made) {
    const auto revisions = library.recipes().revisions(made.look.id);
    const auto sealed = std::ranges::find_if(
        revisions | std::views::reverse,
        [&](const RecipeRevision& revision) { return revision.saved_at <= *made.signed_at; });
    if (sealed == revisions.rend()) return;
    const Recipe& today = revisions.back().recipe;
    made.changes = told_changes(sealed->recipe, recipe_difference(sealed->recipe, today));
    std::ranges::move(recipe_hints(sealed->recipe, today), std::back_inserter(made.hints));
}

LookAsMade look_as_made(Library& library, const Wedding& wedding, const Look& look) {
    const auto sign_off = library.sign_offs().standing(look.id);
    LookAsMade made{look, {}, pairs_of(look, photos_of(library, wedding, look, sign_off)), {}, {}};
    if (std::ranges::any_of(made.pairs, &AgreedPair::both)) {
        made.hints.emplace_back("Where the hair is parted cannot be told from the photos.");
    }
    if (!sign_off) return made;
    made.signed_at = sign_off->signed_at;
    compare_recipes(library, made);
    return made;
}

ClientAsMade client_as_made(Library& library, const Wedding& wedding, const PartyMember& member,
                            const std::vector<Seat>& seats) {
    ClientAsMade made{*library.clients().find(member.client), member.role, {}, {}};
    std::ranges::copy_if(seats, std::back_inserter(made.seats),
                         [&](const Seat& seat) { return seat.client == member.client; });
    auto looks = library.looks().of_client(member.client);
    std::erase_if(looks, [&](const Look& look) { return look.wedding != wedding.id; });
    std::ranges::stable_sort(looks, {}, &Look::worn);
    for (const Look& look : looks) made.looks.push_back(look_as_made(library, wedding, look));
    return made;
}

int first_seat(const ClientAsMade& client) {
    constexpr int never = 2 * 24 * 60;
    return client.seats.empty() ? never : client.seats.front().begins;
}

}  // namespace

bool is_on_the_day(const Sitting& sitting, const Wedding& wedding) {
    return sitting.kind == SittingKind::wedding_day && sitting.wedding == wedding.id;
}

std::vector<Seat> planned_seats(Library& library, WeddingId wedding) {
    const WeddingMorning morning = wedding_morning(library, wedding);
    if (morning.needs.clients.empty()) return {};
    try {
        return plan_of(morning).seats;
    } catch (const std::invalid_argument&) {
        return {};  // what she has said of the morning cannot be planned
    }
}

WeddingAsMade as_made(Library& library, WeddingId wedding) {
    const auto found = library.weddings().find(wedding);
    if (!found) throw StoreError("There is no such wedding in this library.");
    const auto seats = planned_seats(library, wedding);
    WeddingAsMade made{*found, {}};
    for (const PartyMember& member : found->party) {
        made.clients.push_back(client_as_made(library, *found, member, seats));
    }
    std::ranges::stable_sort(made.clients, {}, first_seat);
    return made;
}

std::optional<WeddingId> wedding_to_compare(Library& library, Date today) {
    std::optional<Wedding> best;
    for (const Wedding& wedding : library.weddings().all()) {
        const bool past = wedding.date <= today;
        const bool best_past = best && best->date <= today;
        const bool nearer = best && (past ? wedding.date > best->date : wedding.date < best->date);
        if (!best || (past && !best_past) || (past == best_past && nearer)) best = wedding;
    }
    return best ? std::optional(best->id) : std::nullopt;
}

}  // namespace quarterturn
