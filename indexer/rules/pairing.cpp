#include "indexer/rules/pairing.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "indexer/rules/coverage.h"

namespace quarterturn {
namespace {

using Frames = std::vector<const Photo*>;

double log_ratio(double one, double other) {
    constexpr double least = 1.0 / 1024;
    return std::abs(std::log2(std::max(one, least) / std::max(other, least)));
}

double proportion(const Photo& photo) {
    const FileFacts& file = photo.file;
    return file.width > 0 && file.height > 0 ? static_cast<double>(file.width) / file.height : 1;
}

std::optional<Date> day_of(const Photo& photo) {
    return photo.moment ? std::optional(date_of(*photo.moment)) : std::nullopt;
}

std::chrono::nanoseconds time_between(const Photo& one, const Photo& other) {
    if (!one.moment || !other.moment) return std::chrono::nanoseconds::max();
    return std::chrono::abs(*one.moment - *other.moment);
}

// The frames of the side that may stand, nearly as sharp as its sharpest.
Frames sharp_frames(const Frames& side) {
    Frames frames;
    std::ranges::copy_if(side, std::back_inserter(frames),
                         [](const Photo* photo) { return usable(*photo); });
    double sharpest = 0;
    for (const Photo* photo : frames) sharpest = std::max(sharpest, photo->measures.focus);
    std::erase_if(frames, [&](const Photo* photo) {
        return photo->measures.focus < nearly_as_sharp * sharpest;
    });
    return frames;
}

struct Two {
    const Photo* first = nullptr;
    const Photo* second = nullptr;

    // The closest, then the sharpest, then those taken soonest after each other, then the first.
    bool goes_before(const Two& other) const {
        const auto rank = [](const Two& two) {
            return std::tuple(unlikeness(*two.first, *two.second),
                              -two.first->measures.focus - two.second->measures.focus,
                              time_between(*two.first, *two.second), two.first->id, two.second->id);
        };
        return rank(*this) < rank(other);
    }
};

std::optional<Two> closest(const Frames& first, const Frames& second) {
    std::optional<Two> best;
    for (const Photo* one : first) {
        for (const Photo* other : second) {
            const Two two{one, other};
            if (one != other && (!best || two.goes_before(*best))) best = two;
        }
    }
    return best;
}

class Pairing {
  public:
    explicit Pairing(const LookToPair& look) : look_(look), trials_(sittings_of(trial_)) {}

    std::vector<MadePair> pairs() {
        for (const Angle angle : all_angles) {
            before_and_after(angle);
            trial_and_day(angle);
            trials(angle);
        }
        std::ranges::sort(pairs_, {}, &MadePair::place);
        return std::move(pairs_);
    }

  private:
    using Stands = std::function<bool(const Photo&)>;
    static constexpr SittingKind trial_ = SittingKind::trial;

    // In the order of starts.
    std::vector<SittingId> sittings_of(SittingKind kind) const {
        std::vector<Sitting> sittings = look_.sittings;
        std::erase_if(sittings, [&](const Sitting& sitting) { return sitting.kind != kind; });
        std::ranges::sort(sittings, {},
                          [](const Sitting& each) { return std::pair(each.starts, each.id); });
        std::vector<SittingId> ids;
        for (const Sitting& sitting : sittings) ids.push_back(sitting.id);
        return ids;
    }

    Stands stage(Stage wanted, Angle angle) const {
        return [this, wanted, angle](const Photo& photo) {
            return photo.tags.stage == wanted && photo.tags.angle == angle &&
                   counts_for(photo, look_.look);
        };
    }

    Stands after_at(std::vector<SittingId> sittings, Angle angle) const {
        return [after = stage(Stage::after, angle),
                sittings = std::move(sittings)](const Photo& photo) {
            return after(photo) && photo.tags.sitting &&
                   std::ranges::find(sittings, *photo.tags.sitting) != sittings.end();
        };
    }

    Frames that(const Stands& stands) const {
        Frames frames;
        for (const Photo& photo : look_.photos) {
            if (stands(photo)) frames.push_back(&photo);
        }
        return frames;
    }

    void before_and_after(Angle angle) {
        add({look_.look.id, PairKind::before_and_after, 1, angle}, stage(Stage::before, angle),
            stage(Stage::after, angle));
    }

    void trial_and_day(Angle angle) {
        const PairPlace place{look_.look.id, PairKind::trial_and_day, 1, angle};
        std::vector<SittingId> latest;
        for (const SittingId trial : trials_) {
            if (!sharp_frames(that(after_at({trial}, angle))).empty()) latest = {trial};
        }
        add(place, after_at(latest, angle), after_at(sittings_of(SittingKind::wedding_day), angle));
    }

    void trials(Angle angle) {
        for (std::size_t i = 1; i < trials_.size(); ++i) {
            add({look_.look.id, PairKind::trial_and_trial, static_cast<int>(i), angle},
                after_at({trials_[i - 1]}, angle), after_at({trials_[i]}, angle));
        }
    }

    const PairChoice* said_of(const PairPlace& place) const {
        const auto found = std::ranges::find(look_.places, place,
                                             [](const Pair& pair) { return pair.made.place; });
        return found == look_.places.end() ? nullptr : &found->choice;
    }

    const Photo* photo(std::optional<PhotoId> id) const {
        if (!id) return nullptr;
        const auto found = std::ranges::find(look_.photos, *id, &Photo::id);
        return found == look_.photos.end() ? nullptr : &*found;
    }

    // One side of a pair: who may stand there, and what has become of her own choice for it.
    struct Side {
        Frames frames;
        SideNote note = SideNote::none;
    };

    Side best(const Stands& stands, SideNote note) const {
        return {sharp_frames(that(stands)), note};
    }

    // The photo she chose, while it stands or is pinned; else all that may.
    Side side(std::optional<PhotoId> chosen, bool gone, const Stands& stands) const {
        if (!chosen) return best(stands, gone ? SideNote::removed : SideNote::none);
        const Photo* own = photo(chosen);
        if (own == nullptr || !stands(*own)) return best(stands, SideNote::set_aside);
        return {{own}, usable(*own) ? SideNote::none : SideNote::not_usable};
    }

    void add(const PairPlace& place, const Stands& first, const Stands& second) {
        const PairChoice* said = said_of(place);
        const PairChoice own = said != nullptr ? *said : PairChoice{};
        if (own.pinned && own.first && own.second) return add_pinned(place, own, first, second);
        const Side one = side(own.first, own.first_gone, first);
        const Side other = side(own.second, own.second_gone, second);
        const auto two = closest(one.frames, other.frames);
        if (!two) return;
        pairs_.push_back(
            {place, two->first->id, two->second->id, one.note, other.note, worn_on(two->second)});
    }

    void add_pinned(const PairPlace& place, const PairChoice& pinned, const Stands& first,
                    const Stands& second) {
        pairs_.push_back({place, *pinned.first, *pinned.second, note_of(pinned.first, first),
                          note_of(pinned.second, second), worn_on(photo(pinned.second))});
    }

    // A pinned photo that carries no tag of this look any more is not among its photos.
    SideNote note_of(std::optional<PhotoId> pinned, const Stands& stands) const {
        const Photo* own = photo(pinned);
        if (own == nullptr || !stands(*own)) return SideNote::tagged_otherwise;
        return usable(*own) ? SideNote::none : SideNote::not_usable;
    }

    std::optional<Date> worn_on(const Photo* second) const {
        if (look_.wedding_date) return look_.wedding_date;
        if (second == nullptr) return std::nullopt;
        if (second->tags.sitting) {
            const auto found =
                std::ranges::find(look_.sittings, *second->tags.sitting, &Sitting::id);
            if (found != look_.sittings.end()) return date_of(found->starts);
        }
        return day_of(*second);
    }

    const LookToPair& look_;
    std::vector<SittingId> trials_;
    std::vector<MadePair> pairs_;
};

}  // namespace

double unlikeness(const Photo& one, const Photo& other) {
    constexpr double gamma = 2.2;
    const double light = gamma * log_ratio(one.measures.mean_light, other.measures.mean_light);
    const double shape = log_ratio(proportion(one), proportion(other));
    const double device = one.file.device == other.file.device ? 0 : 0.5;
    const double day = day_of(one) == day_of(other) ? 0 : 0.5;
    return light + shape + device + day;
}

std::vector<MadePair> make_pairs(const LookToPair& look) {
    return Pairing(look).pairs();
}

}  // namespace quarterturn
