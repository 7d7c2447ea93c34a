// Pairs against all pairs there could be, sorted by what is asked of a pair.

#include "indexer/rules/pairing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

constexpr SittingId first_trial{1}, second_trial{2}, day{3}, elsewhere{4};

Sitting sitting(SittingId id, SittingKind kind, const char* starts) {
    Sitting result;
    result.id = id;
    result.kind = kind;
    result.starts = at(starts);
    result.ends = result.starts + std::chrono::hours(2);
    return result;
}

LookToPair look_with(std::vector<Photo> photos) {
    LookToPair look;
    look.look.id = LookId{1};
    look.look.sittings = {day, first_trial, second_trial};
    look.sittings = {sitting(day, SittingKind::wedding_day, "2026-10-10T09:00"),
                     sitting(second_trial, SittingKind::trial, "2026-09-12T14:00"),
                     sitting(first_trial, SittingKind::trial, "2026-08-22T14:00")};
    look.photos = std::move(photos);
    return look;
}

Photo photo(std::int64_t id, Stage stage, SittingId at_sitting, double focus = 5,
            Angle angle = Angle::back) {
    Photo result = tagged_photo(id, stage, angle);
    result.tags.sitting = at_sitting;
    result.measures.focus = focus;
    result.measures.mean_light = 0.5;
    result.file.width = 1500;
    result.file.height = 2000;
    return result;
}

std::string mark(SideNote note) {
    return note == SideNote::none ? std::string() : " (" + std::string(word(note)) + ")";
}

std::string told(const std::vector<MadePair>& pairs) {
    std::string text;
    for (const MadePair& pair : pairs) {
        if (!text.empty()) text += "; ";
        text += std::string(word(pair.place.kind)) + " " + std::to_string(pair.place.number) +
                ": " + std::to_string(pair.first.value) + mark(pair.first_note) + " " +
                std::to_string(pair.second.value) + mark(pair.second_note);
    }
    return text;
}

TEST(Pairing, PutsBeforeBesideAfterAndTheTrialBesideTheDay) {
    const auto look =
        look_with({photo(1, Stage::before, first_trial), photo(2, Stage::after, first_trial),
                   photo(3, Stage::after, second_trial), photo(4, Stage::after, day)});
    EXPECT_EQ(told(make_pairs(look)),
              "before and after 1: 1 2; trial and wedding day 1: 3 4; trial and trial 1: 2 3");
}

TEST(Pairing, TakesTheEarlierTrialWhereTheLaterHasNothingOfTheAngle) {
    const auto look = look_with({photo(2, Stage::after, first_trial), photo(4, Stage::after, day)});
    EXPECT_EQ(told(make_pairs(look)), "trial and wedding day 1: 2 4");
}

TEST(Pairing, PairsNothingWithAFlawedPhotoUnlessSheAcceptedIt) {
    auto look =
        look_with({photo(1, Stage::before, first_trial), photo(2, Stage::after, first_trial)});
    look.photos[0].flaws = {Flaw::moved};
    EXPECT_EQ(told(make_pairs(look)), "");
    look.photos[0].tags.accepted_because = "The curl shows.";
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 2");
}

TEST(Pairing, PrefersTheSameLightAmongSharpFramesButNoSoftOne) {
    auto look = look_with(
        {photo(1, Stage::before, first_trial, 6), photo(2, Stage::after, first_trial, 6),
         photo(3, Stage::after, first_trial, 5.5), photo(4, Stage::after, first_trial, 3)});
    look.photos[1].measures.mean_light = 0.3;
    look.photos[2].measures.mean_light = 0.45;
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 3");
    look.photos[2].measures.focus = 4.7;
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 2")
        << "it is too soft beside the other";
}

TEST(Pairing, HerFrameStandsWhileItsTagsAllow) {
    auto look =
        look_with({photo(1, Stage::before, first_trial, 6), photo(2, Stage::after, first_trial, 6),
                   photo(3, Stage::after, first_trial, 2)});
    Pair place;
    place.made.place = {LookId{1}, PairKind::before_and_after, 1, Angle::back};
    place.choice.second = PhotoId{3};
    look.places = {place};
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 3");
    look.photos[2].flaws = {Flaw::moved};
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 3 (not usable)");
    look.photos[2].tags.angle = Angle::left;
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 2 (set aside)");
    look.photos.pop_back();
    look.places.front().choice = {.second_gone = true};
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 2 (removed)");
}

TEST(Pairing, APinnedPairStaysAndSaysWhichPhotoWasTaggedOtherwise) {
    auto look =
        look_with({photo(1, Stage::before, first_trial, 6), photo(2, Stage::after, first_trial, 6),
                   photo(3, Stage::after, first_trial, 2)});
    Pair place;
    place.made.place = {LookId{1}, PairKind::before_and_after, 1, Angle::back};
    place.choice = {.first = PhotoId{1}, .second = PhotoId{3}, .pinned = true};
    look.places = {place};
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 3");
    look.photos[0].flaws = {Flaw::too_dark};
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 (not usable) 3");
    look.photos[0].flaws.clear();
    look.photos[2].tags.stage = Stage::during;
    EXPECT_EQ(told(make_pairs(look)), "before and after 1: 1 3 (tagged otherwise)");
    look.photos.erase(look.photos.begin());
    EXPECT_EQ(told(make_pairs(look)),
              "before and after 1: 1 (tagged otherwise) 3 (tagged otherwise)")
        << "it is another look's now";
}

TEST(Pairing, IsWornOnTheWeddingElseOnTheDayOfTheSecondPhoto) {
    auto look =
        look_with({photo(1, Stage::before, first_trial), photo(2, Stage::after, first_trial)});
    EXPECT_EQ(make_pairs(look).front().worn_on, parse_date("2026-08-22"));
    look.wedding_date = parse_date("2026-10-10");
    EXPECT_EQ(make_pairs(look).front().worn_on, parse_date("2026-10-10"));
}

// The rule again, from all pairs of photos there are.
struct Oracle {
    const LookToPair& look;

    bool stands(const Photo& photo, const PairPlace& place, bool second) const {
        const Tags& tags = photo.tags;
        if (tags.angle != place.angle) return false;
        const bool hers = tags.look == LookId{1};
        if (place.kind == PairKind::before_and_after) {
            if (second) return hers && tags.stage == Stage::after;
            const bool brushed_out = !tags.look && tags.sitting && *tags.sitting != elsewhere;
            return tags.stage == Stage::before && (hers || brushed_out);
        }
        if (!hers || tags.stage != Stage::after) return false;
        if (place.kind == PairKind::trial_and_trial) {
            return tags.sitting == (second ? second_trial : first_trial);
        }
        if (second) return tags.sitting == day;
        PairPlace later = place;
        later.kind = PairKind::trial_and_trial;
        const bool any_later = std::ranges::any_of(look.photos, [&](const Photo& other) {
            return good(other) && stands(other, later, true);
        });
        return tags.sitting == (any_later ? second_trial : first_trial);
    }

    static bool good(const Photo& photo) {
        return photo.flaws.empty() || photo.tags.accepted_because != "";
    }

    bool may(const Photo& photo, const PairPlace& place, bool second) const {
        if (!good(photo) || !stands(photo, place, second)) return false;
        return std::ranges::none_of(look.photos, [&](const Photo& other) {
            return good(other) && stands(other, place, second) &&
                   other.measures.focus * 0.8 > photo.measures.focus;
        });
    }

    static double apart(const Photo& one, const Photo& other) {
        const double ratio = one.measures.mean_light / other.measures.mean_light;
        const double shape =
            (1.0 * one.file.width / one.file.height) / (1.0 * other.file.width / other.file.height);
        double sum = std::abs(std::log2(ratio)) * 2.2 + std::abs(std::log2(shape));
        if (one.file.device != other.file.device) sum += 0.5;
        const auto date = [](const Photo& photo) {
            return photo.moment ? iso_text(*photo.moment).substr(0, 10) : "";
        };
        return date(one) == date(other) ? sum : sum + 0.5;
    }

    // Every pair that may be, the best first.
    std::vector<std::pair<PhotoId, PhotoId>> all(const PairPlace& place) const {
        std::vector<std::pair<const Photo*, const Photo*>> pairs;
        for (const Photo& one : look.photos) {
            for (const Photo& other : look.photos) {
                if (may(one, place, false) && may(other, place, true)) {
                    pairs.emplace_back(&one, &other);
                }
            }
        }
        std::ranges::sort(pairs, [](const auto& left, const auto& right) {
            const double by_likeness =
                apart(*left.first, *left.second) - apart(*right.first, *right.second);
            if (std::abs(by_likeness) > 1e-9) return by_likeness < 0;
            const double by_focus = left.first->measures.focus + left.second->measures.focus -
                                    right.first->measures.focus - right.second->measures.focus;
            if (by_focus != 0) return by_focus > 0;
            const auto gap = [](const auto& pair) {
                if (!pair.first->moment || !pair.second->moment) return INT64_MAX;
                return std::abs((*pair.second->moment - *pair.first->moment).count());
            };
            if (gap(left) != gap(right)) return gap(left) < gap(right);
            return std::pair(left.first->id, left.second->id) <
                   std::pair(right.first->id, right.second->id);
        });
        std::vector<std::pair<PhotoId, PhotoId>> ids;
        for (const auto& [one, other] : pairs) ids.emplace_back(one->id, other->id);
        return ids;
    }
};

Photo any_photo(std::int64_t id) {
    const auto pick = [](auto... values) { return *rc::gen::element(values...); };
    Photo result = photo(id, pick(Stage::before, Stage::after, Stage::after, Stage::during),
                         pick(first_trial, second_trial, day, elsewhere),
                         pick(2.0, 4.0, 5.0, 6.0, 8.0), pick(Angle::back, Angle::left));
    // Powers of two, so that no rounding decides.
    result.measures.mean_light = pick(0.25, 0.5, 0.5, 1.0);
    if (pick(0, 1, 2) == 0) std::swap(result.file.width, result.file.height);
    if (pick(0, 1) == 0) result.file.device = DeviceId{1};
    if (pick(0, 1, 2, 3) > 0) {
        result.moment =
            at(pick("2026-08-22T14:10:00", "2026-08-22T15:00:00", "2026-10-10T11:00:00"));
    }
    if (pick(0, 1, 2, 3) == 0) result.flaws = {Flaw::moved};
    if (pick(0, 1, 2, 3) == 0) result.tags.accepted_because = "good enough";
    if (pick(0, 1, 2) == 0) result.tags.look.reset();
    if (pick(0, 1, 2, 3, 4) == 0) result.tags.look = LookId{2};
    return result;
}

RC_GTEST_PROP(PairingProperty, IsTheBestOfAllPairsThereCouldBe, ()) {
    std::vector<Photo> photos;
    for (int id = *rc::gen::inRange(0, 24); id > 0; --id) photos.push_back(any_photo(id));
    LookToPair look = look_with(photos);
    look.sittings.push_back(sitting(elsewhere, SittingKind::model_shoot, "2026-07-01T10:00"));
    std::vector<std::pair<PairPlace, std::pair<PhotoId, PhotoId>>> expected;
    for (const PairKind kind : all_pair_kinds) {
        for (const Angle angle : {Angle::left, Angle::back}) {
            const PairPlace place{LookId{1}, kind, 1, angle};
            const auto all = Oracle{look}.all(place);
            if (!all.empty()) expected.emplace_back(place, all.front());
        }
    }
    std::ranges::sort(expected);
    std::vector<std::pair<PairPlace, std::pair<PhotoId, PhotoId>>> made;
    for (const MadePair& pair : make_pairs(look)) {
        made.emplace_back(pair.place, std::pair(pair.first, pair.second));
    }
    RC_ASSERT(made == expected);
}

}  // namespace
}  // namespace quarterturn
