#include "indexer/intake/sort.h"

#include <algorithm>
#include <set>

#include "indexer/intake/move_lock.h"
#include "indexer/intake/places.h"
#include "indexer/intake/sort_steps.h"

namespace quarterturn {
namespace {

std::string why_unplaced(const Photo& photo, std::size_t fits) {
    if (!photo.moment) {
        return photo.file.name + " carries no time: place it in its sitting by hand.";
    }
    const std::string taken = photo.file.name + " was taken on " +
                              iso_text(date_of(*photo.moment)) + " at " + clock_text(*photo.moment);
    if (fits == 0) {
        return taken +
               ", when there was no sitting: add the sitting or correct its hours, set the "
               "camera's clock right, or place the photo by hand.";
    }
    return taken + ", when there were " + std::to_string(fits) +
           " sittings: place it in the right one by hand.";
}

std::vector<SittingId> fitting(const Photo& photo, const SittingsByTime& sittings) {
    return photo.moment ? sittings.at(*photo.moment) : std::vector<SittingId>{};
}

void place(Library& library, const SittingsByTime& sittings, Photo& photo, SortReport& report) {
    const std::vector<SittingId> fits = fitting(photo, sittings);
    const auto sitting = fits.size() == 1 ? std::optional{fits.front()} : std::nullopt;
    if (!sitting) {
        report.unplaced.push_back({photo.id, fits, why_unplaced(photo, fits.size())});
    }
    if (sitting == photo.tags.sitting) return;
    library.photos().set_sitting_by_time(photo.id, sitting);
    photo.tags.sitting = sitting;
    if (sitting) report.placed.push_back(photo.id);
}

std::unordered_map<PhotoId, StageSuggestion> stages_of(Library& library,
                                                       const std::vector<Photo>& photos) {
    std::unordered_map<SittingId, std::vector<TimedPhoto>> timed;
    for (const Photo& photo : photos) {
        if (photo.tags.sitting && photo.moment) {
            timed[*photo.tags.sitting].push_back({photo.id, *photo.moment});
        }
    }
    std::unordered_map<PhotoId, StageSuggestion> stages;
    for (const auto& [sitting, of_sitting] : timed) {
        const int looks = static_cast<int>(library.looks().of_sitting(sitting).size());
        for (StageSuggestion& stage : suggest_stages(of_sitting, looks)) {
            stages.emplace(stage.photo, std::move(stage));
        }
    }
    return stages;
}

void suggest(Library& library, const std::vector<Photo>& photos) {
    const auto stages = stages_of(library, photos);
    for (const Photo& photo : photos) {
        Suggestion suggestion = photo.suggestion;
        suggestion.stage.reset();
        suggestion.stage_source.clear();
        if (const auto found = stages.find(photo.id); found != stages.end()) {
            suggestion.stage = found->second.stage;
            suggestion.stage_source = found->second.source;
        }
        if (suggestion != photo.suggestion) library.photos().set_suggestion(photo.id, suggestion);
    }
}

// The photos, and all others of the sittings they lie in: their stages follow from each other.
std::vector<Photo> with_their_sittings(Library& library, const std::vector<Photo>& photos) {
    std::set<SittingId> sittings;
    std::vector<Photo> all;
    for (const Photo& photo : photos) {
        if (photo.tags.sitting) {
            sittings.insert(*photo.tags.sitting);
        } else {
            all.push_back(photo);
        }
    }
    for (const SittingId sitting : sittings) {
        std::ranges::move(library.photos().of_sitting(sitting), std::back_inserter(all));
    }
    return all;
}

// After these went into the bin or came out of it: all others lie as they did.
void sort_again(Library& library, std::span<const PhotoId> ids) {
    Transaction transaction{library.database()};
    const SittingsByTime sittings(library.sittings().all());
    std::vector<Photo> photos = library.photos().these(ids);
    std::vector<Photo> before_and_now = library.photos().these_also_in_bin(ids);
    SortReport report;
    for (Photo& photo : photos) {
        if (!photo.tags.placed_by_hand) place(library, sittings, photo, report);
    }
    std::erase_if(before_and_now, [](const Photo& photo) { return !photo.tags.sitting; });
    std::ranges::copy(photos, std::back_inserter(before_and_now));
    suggest(library, with_their_sittings(library, before_and_now));
    transaction.commit();
    const MoveLock lock{library};
    if (lock.held()) (void)move_to_folders(library, library.photos().these(ids));
}

std::optional<Turned> sorted_again(Library& library, std::optional<Turned> turned) {
    if (!turned) return turned;
    if (turned->moves_photos) {
        sort_by_time(library);
    } else if (!turned->binned.empty()) {
        sort_again(library, turned->binned);
    }
    return turned;
}

}  // namespace

SortReport place_by_time(Library& library) {
    Transaction transaction{library.database()};
    const SittingsByTime sittings(library.sittings().all());
    std::vector<Photo> photos = library.photos().all();
    SortReport report;
    for (Photo& photo : photos) {
        if (!photo.tags.placed_by_hand) place(library, sittings, photo, report);
    }
    suggest(library, photos);
    transaction.commit();
    return report;
}

SortReport sort_by_time(Library& library) {
    SortReport report = place_by_time(library);
    report.not_moved = tidy_folders(library);
    return report;
}

std::vector<UnplacedPhoto> unplaced_photos(Library& library) {
    const SittingsByTime sittings(library.sittings().all());
    std::vector<UnplacedPhoto> unplaced;
    for (const Photo& photo : library.photos().in_no_sitting()) {
        if (photo.tags.placed_by_hand) continue;
        std::vector<SittingId> fits = fitting(photo, sittings);
        if (fits.size() == 1) continue;  // sorting has not come to it yet
        std::string why = why_unplaced(photo, fits.size());
        unplaced.push_back({photo.id, std::move(fits), std::move(why)});
    }
    return unplaced;
}

std::optional<Turned> undo(Library& library) {
    return sorted_again(library, library.history().undo());
}

std::optional<Turned> redo(Library& library) {
    return sorted_again(library, library.history().redo());
}

std::vector<RefusedFile> tidy_folders(Library& library) {
    const MoveLock lock{library};
    if (!lock.held()) return {};
    return refused_files(move_to_folders(library));
}

}  // namespace quarterturn
