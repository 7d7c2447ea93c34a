#include "indexer/intake/day_photos.h"

#include <algorithm>
#include <map>

#include "indexer/intake/heads.h"
#include "indexer/intake/sort.h"
#include "indexer/rules/suggestion.h"

namespace quarterturn {
namespace {

Wedding wedding_called(Library& library, WeddingId id) {
    const auto wedding = library.weddings().find(id);
    if (!wedding) throw StoreError("There is no such wedding in this library.");
    return *wedding;
}

LocalTime midnight_of(const Wedding& wedding) {
    return LocalTime(std::chrono::local_days(wedding.date));
}

std::vector<Photo> photos_without_look(Library& library, const Wedding& wedding) {
    PhotoSearch of_the_day;
    of_the_day.from = wedding.date;
    of_the_day.to = wedding.date;
    std::vector<PhotoId> ids;
    for (const FoundPhoto& found : library.search().find(of_the_day)) ids.push_back(found.id);
    std::vector<Photo> photos = library.photos().these(ids);
    std::erase_if(photos, [](const Photo& photo) { return photo.tags.look.has_value(); });
    return photos;
}

DayPhoto day_photo(const Photo& photo) {
    DayPhoto day{photo.id, *photo.moment, photo.tags.angle, photo.head_signs};
    if (!day.told) {
        if (const auto suggested = suggest_angle(photo)) day.told = suggested->angle;
    }
    return day;
}

std::optional<LookId> look_for_the_day(Library& library, WeddingId wedding, ClientId client) {
    auto looks = library.looks().of_client(client);
    std::erase_if(looks, [&](const Look& look) { return look.wedding != wedding; });
    const auto first = std::ranges::min_element(looks, {}, &Look::worn);
    return first == looks.end() ? std::nullopt : std::optional(first->id);
}

std::optional<Sitting> sitting_on_the_day(Library& library, WeddingId wedding, ClientId client) {
    for (const Sitting& sitting : library.sittings().of_client(client)) {
        if (sitting.kind == SittingKind::wedding_day && sitting.wedding == wedding) return sitting;
    }
    return std::nullopt;
}

// Gives the photos of one look their sitting, which is made where there is none.
class DayPlacer {
  public:
    DayPlacer(Library& library, const Wedding& wedding, std::span<const Seat> seats)
        : library_(library), wedding_(wedding), clients_(day_clients(seats)) {}

    void place(const Look& look, const std::vector<const DayProposal*>& photos) {
        if (std::ranges::find(wedding_.party, look.client, &PartyMember::client) ==
            wedding_.party.end()) {
            throw StoreError("'" + look.name + "' is of a client who is not of the party of " +
                             wedding_.name + ".");
        }
        const SittingId sitting = sitting_for(look.client, photos);
        work_on(look, sitting);
        for (const DayProposal* each : photos) {
            Tags tags = each->photo.tags;
            tags.sitting = sitting;
            tags.placed_by_hand = true;
            tags.look = look.id;
            tags.stage = Stage::after;
            tags.angle = each->angle;
            changes_.push_back({each->photo.id, tags});
        }
    }

    // Answers how many.
    int finish() {
        const int placed = static_cast<int>(changes_.size());
        library_.history().apply({.said = said(placed), .tags = std::move(changes_), .shifts = {}});
        return placed;
    }

    std::string said(int placed) const {
        const std::string photos = placed == 1 ? "a photo" : std::to_string(placed) + " photos";
        return "placed " + photos + " of " + wedding_.name;
    }

  private:
    SittingId sitting_for(ClientId client, const std::vector<const DayProposal*>& photos) {
        if (const auto there = sitting_on_the_day(library_, wedding_.id, client)) return there->id;
        Sitting sitting;
        sitting.client = client;
        sitting.wedding = wedding_.id;
        sitting.kind = SittingKind::wedding_day;
        sitting.starts = *photos.front()->photo.moment;
        sitting.ends = *photos.back()->photo.moment;
        const auto seat = std::ranges::find(clients_, client, &DayClient::client);
        if (seat != clients_.end()) {
            const LocalTime midnight = midnight_of(wedding_);
            sitting.starts =
                std::min(sitting.starts, midnight + std::chrono::minutes(seat->begins));
            sitting.ends = std::max(sitting.ends, midnight + std::chrono::minutes(seat->ends));
        }
        return library_.sittings().add(sitting);
    }

    void work_on(Look look, SittingId sitting) {
        if (std::ranges::find(look.sittings, sitting) != look.sittings.end()) return;
        look.sittings.push_back(sitting);
        library_.looks().change(look);
    }

    Library& library_;
    const Wedding& wedding_;
    std::vector<DayClient> clients_;
    std::vector<TagChange> changes_;
};

}  // namespace

std::vector<DayProposal> propose_day_photos(Library& library, WeddingId wedding,
                                            std::span<const Seat> seats) {
    const Wedding day = wedding_called(library, wedding);
    std::vector<DayPhoto> timed;
    std::vector<DayProposal> proposals;
    for (const Photo& photo : photos_without_look(library, day)) {
        timed.push_back(day_photo(photo));
        proposals.push_back({photo, {}, {}, false});
    }
    // Who has no look for the day can be given no photo.
    std::vector<Seat> with_look(seats.begin(), seats.end());
    std::erase_if(with_look, [&](const Seat& seat) {
        return !look_for_the_day(library, wedding, seat.client);
    });
    const auto places = propose_places(timed, day_clients(with_look), midnight_of(day));
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!places[i].client) continue;
        proposals[i].look = look_for_the_day(library, wedding, *places[i].client);
        proposals[i].angle = places[i].angle;
        proposals[i].angle_told = places[i].angle_told;
    }
    return proposals;
}

std::vector<DayProposal> propose_seen_day_photos(
    Library& library, Decoder& decoder, WeddingId wedding, std::span<const Seat> seats,
    const std::function<void(std::int64_t, std::int64_t)>& progress) {
    const Wedding day = wedding_called(library, wedding);
    look_for_heads_in(library, decoder, photos_without_look(library, day), progress);
    return propose_day_photos(library, wedding, seats);
}

int place_day_photos(Library& library, WeddingId wedding, std::span<const Seat> seats,
                     std::span<const DayProposal> confirmed) {
    const Wedding day = wedding_called(library, wedding);
    std::map<LookId, std::vector<const DayProposal*>> by_look;
    for (const DayProposal& each : confirmed) {
        if (each.look) by_look[*each.look].push_back(&each);
    }
    int placed = 0;
    library.history().record("placed photos of " + day.name, [&] {
        DayPlacer placer(library, day, seats);
        for (const auto& [id, photos] : by_look) {
            const auto look = library.looks().find(id);
            if (!look)
                throw StoreError("There is no look number " + std::to_string(id.value) + ".");
            placer.place(*look, photos);
        }
        placed = placer.finish();
    });
    sort_by_time(library);
    return placed;
}

}  // namespace quarterturn
