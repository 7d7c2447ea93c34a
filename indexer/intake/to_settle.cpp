#include "indexer/intake/to_settle.h"

#include <map>

namespace quarterturn {
namespace {

using std::chrono::seconds;

constexpr std::size_t most_nearby = 12;

LocalTime then(const Photo& photo, const ClockShift& shift) {
    return photo.file.taken->local + shift.shift;
}

seconds apart(LocalTime one, LocalTime other) {
    return std::chrono::abs(std::chrono::floor<seconds>(one - other));
}

std::vector<Photo> timed(std::vector<Photo> photos) {
    std::erase_if(photos, [](const Photo& photo) { return !photo.file.taken; });
    return photos;
}

// The others' photos of the sittings that the device's photos would fall in.
std::vector<Photo> photos_beside(Library& library, const DoubtfulClock& clock) {
    std::map<SittingId, bool> sittings;
    for (const Sitting& sitting : library.sittings().all()) {
        sittings[sitting.id] = std::ranges::any_of(clock.of_device, [&](const Photo& photo) {
            const LocalTime moment = then(photo, clock.shift);
            return sitting.starts <= moment && moment <= sitting.ends;
        });
    }
    std::vector<Photo> others;
    for (const auto& [sitting, meant] : sittings) {
        if (!meant) continue;
        for (Photo& photo : library.photos().of_sitting(sitting)) {
            if (photo.moment && photo.file.device != clock.device.id) {
                others.push_back(std::move(photo));
            }
        }
    }
    std::ranges::sort(others, {}, [](const Photo& photo) { return photo.moment; });
    return others;
}

// The two pictures, one by each device, that would be nearest in time.
void choose_pictures(DoubtfulClock& clock) {
    auto nearest = seconds::max();
    for (const Photo& own : clock.of_device) {
        for (const Photo& other : clock.of_others) {
            const seconds distance = apart(then(own, clock.shift), *other.moment);
            if (distance >= nearest) continue;
            nearest = distance;
            clock.own = own;
            clock.beside = other;
        }
    }
    if (!clock.own && !clock.of_device.empty()) clock.own = clock.of_device.front();
}

std::vector<DoubtfulClock> doubtful_clocks(Library& library) {
    std::vector<DoubtfulClock> clocks;
    for (ClockShift& shift : propose_clock_shifts(library)) {
        DoubtfulClock clock;
        clock.device = library.devices().find(shift.device).value();
        clock.shift = std::move(shift);
        clock.of_device = timed(library.photos().of_device(clock.device.id));
        clock.of_others = photos_beside(library, clock);
        choose_pictures(clock);
        clocks.push_back(std::move(clock));
    }
    return clocks;
}

seconds away(const Sitting& sitting, const std::optional<LocalTime>& moment) {
    if (!moment) return seconds{0};
    if (sitting.starts <= *moment && *moment <= sitting.ends) return seconds{0};
    return std::min(apart(sitting.starts, *moment), apart(sitting.ends, *moment));
}

std::vector<Sitting> nearest_sittings(std::vector<Sitting> sittings,
                                      const std::optional<LocalTime>& moment) {
    std::ranges::reverse(sittings);  // without a moment, the newest are the likeliest
    std::ranges::stable_sort(sittings, {},
                             [&](const Sitting& sitting) { return away(sitting, moment); });
    if (sittings.size() > most_nearby) sittings.resize(most_nearby);
    return sittings;
}

std::vector<UnplacedGroup> unplaced_groups(Library& library) {
    const std::vector<Sitting> sittings = library.sittings().all();
    std::vector<UnplacedGroup> groups;
    std::map<std::pair<bool, std::vector<SittingId>>, std::size_t> places;
    for (const UnplacedPhoto& unplaced : unplaced_photos(library)) {
        Photo photo = library.photos().find(unplaced.photo).value();
        const auto [place, fresh] =
            places.try_emplace(std::pair(photo.moment.has_value(), unplaced.fits), groups.size());
        if (fresh) {
            UnplacedGroup& group = groups.emplace_back();
            std::ranges::copy_if(
                sittings, std::back_inserter(group.fits), [&](const Sitting& sitting) {
                    return std::ranges::find(unplaced.fits, sitting.id) != unplaced.fits.end();
                });
            group.nearby = nearest_sittings(sittings, photo.moment);
        }
        groups[place->second].photos.push_back(std::move(photo));
    }
    return groups;
}

}  // namespace

ToSettle to_settle(Library& library) {
    return {doubtful_clocks(library), unplaced_groups(library)};
}

}  // namespace quarterturn
