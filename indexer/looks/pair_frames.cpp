#include "indexer/looks/pair_frames.h"

#include <algorithm>
#include <set>

#include "indexer/rules/coverage.h"

namespace quarterturn {
namespace {

// Those of unknown moment last.
auto by_moment(const Photo& photo) {
    return std::tuple(!photo.moment, photo.moment.value_or(LocalTime{}), photo.id);
}

std::optional<SittingKind> kind_of(Library& library, const Photo& photo) {
    if (!photo.tags.sitting) return std::nullopt;
    const auto sitting = library.sittings().find(*photo.tags.sitting);
    return sitting ? std::optional(sitting->kind) : std::nullopt;
}

class Side {
  public:
    Side(Library& library, const Look& look, const Pair& pair, bool second)
        : library_(library), look_(look), place_(pair.made.place), second_(second) {
        const PhotoId own = second ? pair.made.second : pair.made.first;
        own_ = library.photos().find(own);
    }

    std::vector<Photo> among(const std::vector<Photo>& photos) const {
        std::vector<Photo> frames;
        for (const Photo& photo : photos) {
            if (own_ && photo.id == own_->id) continue;
            if (stands(photo)) frames.push_back(photo);
        }
        if (own_) frames.push_back(*own_);
        std::ranges::sort(frames, {}, by_moment);
        return frames;
    }

  private:
    bool stands(const Photo& photo) const {
        const bool before = place_.kind == PairKind::before_and_after && !second_;
        if (photo.tags.stage != (before ? Stage::before : Stage::after)) return false;
        if (photo.tags.angle != place_.angle || !counts_for(photo, look_)) return false;
        if (place_.kind == PairKind::before_and_after) return true;
        if (place_.kind == PairKind::trial_and_day && second_) {
            return kind_of(library_, photo) == SittingKind::wedding_day;
        }
        return own_ && photo.tags.sitting && photo.tags.sitting == own_->tags.sitting;
    }

    Library& library_;
    const Look& look_;
    PairPlace place_;
    bool second_;
    std::optional<Photo> own_;
};

std::vector<Photo> photos_of_client(Library& library, ClientId client) {
    std::map<PhotoId, Photo> photos;
    for (const Look& look : library.looks().of_client(client)) {
        for (Photo& photo : library.photos().around_look(look)) {
            photos.emplace(photo.id, std::move(photo));
        }
    }
    std::vector<Photo> result;
    for (auto& [id, photo] : photos) result.push_back(std::move(photo));
    return result;
}

// Frames of which the best one goes on.
auto moment_of_work(const Photo& photo) {
    const auto day = photo.moment ? std::optional(date_of(*photo.moment)) : std::nullopt;
    return std::tuple(photo.tags.angle, photo.tags.sitting, photo.tags.sitting ? std::nullopt : day,
                      photo.tags.stage, photo.tags.look);
}

}  // namespace

PairFrames frames_for(Library& library, const Pair& pair) {
    const auto look = library.looks().find(pair.made.place.look);
    if (!look) return {};
    const std::vector<Photo> photos = library.photos().around_look(*look);
    return {Side(library, *look, pair, false).among(photos),
            Side(library, *look, pair, true).among(photos)};
}

std::map<Angle, std::vector<ProgressFrame>> progress_of(Library& library, ClientId client) {
    std::map<decltype(moment_of_work(Photo{})), Photo> best;
    for (const Photo& photo : photos_of_client(library, client)) {
        if (!photo.tags.angle || !photo.tags.stage || !usable(photo)) continue;
        const auto [place, is_new] = best.try_emplace(moment_of_work(photo), photo);
        if (!is_new && photo.measures.focus > place->second.measures.focus) place->second = photo;
    }
    std::map<Angle, std::vector<ProgressFrame>> progress;
    for (const auto& [of, photo] : best) {
        progress[*photo.tags.angle].push_back({photo, kind_of(library, photo)});
    }
    for (auto& [angle, frames] : progress) {
        std::ranges::sort(frames, {},
                          [](const ProgressFrame& frame) { return by_moment(frame.photo); });
    }
    return progress;
}

}  // namespace quarterturn
