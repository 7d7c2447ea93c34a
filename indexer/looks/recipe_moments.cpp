#include "indexer/looks/recipe_moments.h"

#include <algorithm>

namespace quarterturn {
namespace {

std::vector<Photo> photos_at(Library& library, const Look& look,
                             const std::optional<Sitting>& sitting) {
    std::vector<Photo> photos = library.photos().around_look(look);
    std::erase_if(photos, [&](const Photo& photo) {
        return sitting ? photo.tags.sitting != sitting->id : photo.tags.look != look.id;
    });
    return photos;
}

std::optional<Sitting> sitting_of(Library& library, const RecipeRevision& revision) {
    return revision.sitting ? library.sittings().find(*revision.sitting) : std::nullopt;
}

bool shows_look(Library& library, const Look& look, const Sitting& sitting) {
    const auto photos = photos_at(library, look, sitting);
    return std::any_of(photos.begin(), photos.end(),
                       [&](const Photo& photo) { return photo.tags.look == look.id; });
}

// The sittings of the look that wrote no revision, and have photos of it.
std::vector<Sitting> sittings_without_words(Library& library, const Look& look,
                                            const std::vector<RecipeRevision>& revisions) {
    std::vector<Sitting> silent;
    for (const SittingId id : look.sittings) {
        const bool wrote =
            std::any_of(revisions.begin(), revisions.end(),
                        [&](const RecipeRevision& revision) { return revision.sitting == id; });
        const auto sitting = library.sittings().find(id);
        if (!wrote && sitting && shows_look(library, look, *sitting)) silent.push_back(*sitting);
    }
    std::sort(silent.begin(), silent.end(),
              [](const Sitting& a, const Sitting& b) { return a.starts < b.starts; });
    return silent;
}

std::size_t newest_at(const std::vector<RecipeRevision>& revisions, LocalTime moment) {
    std::size_t newest = 0;
    for (std::size_t i = 0; i < revisions.size(); ++i) {
        if (revisions[i].saved_at <= moment) newest = i;
    }
    return newest;
}

void add_moments(Library& library, const Look& look, std::vector<RecipeMoment>& moments) {
    const auto revisions = library.recipes().revisions(look.id);
    if (revisions.empty()) return;
    const auto silent = sittings_without_words(library, look, revisions);
    for (std::size_t i = 0; i < revisions.size(); ++i) {
        std::vector<std::optional<Sitting>> done_from_it;
        if (auto written_at = sitting_of(library, revisions[i])) done_from_it.push_back(written_at);
        for (const Sitting& sitting : silent) {
            if (newest_at(revisions, sitting.starts) == i) done_from_it.emplace_back(sitting);
        }
        if (done_from_it.empty()) done_from_it.emplace_back();
        for (const auto& sitting : done_from_it) moments.push_back({look, revisions[i], sitting});
    }
}

bool same_sitting(const RecipeMoment& one, const RecipeMoment& other) {
    if (!one.sitting || !other.sitting) return !one.sitting && !other.sitting;
    return one.sitting->id == other.sitting->id;
}

std::vector<Angle> angles_in_order() {
    std::vector<Angle> angles(quarter_angles.begin(), quarter_angles.end());
    for (const Angle angle : all_angles) {
        if (std::find(angles.begin(), angles.end(), angle) == angles.end()) angles.push_back(angle);
    }
    return angles;
}

std::optional<Photo> best_of(const RecipeMoment& moment, Angle angle,
                             const std::vector<Photo>& photos) {
    const auto found = photos_of_shot(moment.look, {Stage::after, angle}, photos);
    return found.empty() ? std::nullopt : std::optional(found.front());
}

}  // namespace

bool RecipeMoment::is(const RecipeMoment& other) const {
    return look.id == other.look.id && revision.id == other.revision.id &&
           same_sitting(*this, other);
}

std::vector<RecipeMoment> recipe_moments(Library& library, ClientId client) {
    std::vector<RecipeMoment> moments;
    for (const Look& look : library.looks().of_client(client)) add_moments(library, look, moments);
    return moments;
}

std::optional<MomentPair> likely_pair(const std::vector<RecipeMoment>& moments, LookId look) {
    std::vector<std::size_t> own;
    std::optional<std::size_t> of_another;
    for (std::size_t i = 0; i < moments.size(); ++i) {
        if (moments[i].look.id == look) {
            own.push_back(i);
        } else {
            of_another = i;
        }
    }
    if (own.empty()) return std::nullopt;
    const std::size_t newest = own.back();
    for (auto before = own.rbegin() + 1; before != own.rend(); ++before) {
        if (!same_sitting(moments[*before], moments[newest])) return MomentPair{*before, newest};
    }
    if (own.size() > 1) return MomentPair{own[own.size() - 2], newest};
    if (of_another) return MomentPair{*of_another, newest};
    return std::nullopt;
}

std::vector<AnglePair> angle_pairs(Library& library, const RecipeMoment& was,
                                   const RecipeMoment& is) {
    if (was.look.id == is.look.id && same_sitting(was, is)) return {};
    const auto before = photos_at(library, was.look, was.sitting);
    const auto after = photos_at(library, is.look, is.sitting);
    std::vector<AnglePair> pairs;
    for (const Angle angle : angles_in_order()) {
        AnglePair pair{angle, best_of(was, angle, before), best_of(is, angle, after)};
        const bool same = pair.was && pair.is && pair.was->id == pair.is->id;
        if (!same && (pair.was || pair.is)) pairs.push_back(std::move(pair));
    }
    return pairs;
}

}  // namespace quarterturn
