#include "indexer/rules/coverage.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

const Shot back_after{Stage::after, Angle::back};
const Shot left_after{Stage::after, Angle::left};

Look evening() {
    Look look;
    look.id = LookId{1};
    look.name = "Evening";
    look.sittings = {SittingId{5}};
    return look;
}

CoverageReport judge(const ShotList& list, const std::vector<Photo>& photos,
                     const std::vector<Waiver>& waivers = {}) {
    return judge_coverage(evening(), list, photos, waivers);
}

Photo flawed(Photo photo, Flaw flaw) {
    photo.flaws = {flaw};
    return photo;
}

TEST(Coverage, NamesTheFirstMissingShotAndHowManyMore) {
    const auto report = judge(default_shot_list(), {});
    EXPECT_FALSE(report.complete);
    EXPECT_EQ(report.next_shot, "Evening: no before photo of the left side, and 7 more to shoot.");
}

TEST(Coverage, SaysWhatIsWrongWithAWeakShot) {
    const auto photo = flawed(tagged_photo(1, Stage::after, Angle::back), Flaw::out_of_focus);
    const auto report = judge({{back_after, Need::required}}, {photo});
    EXPECT_EQ(report.lines[0].verdict, Coverage::weak);
    EXPECT_EQ(report.lines[0].photo, PhotoId{1});
    EXPECT_EQ(report.lines[0].flaws, std::vector{Flaw::out_of_focus});
    EXPECT_EQ(report.next_shot, "Evening: the best after photo of the back is out of focus.");
}

TEST(Coverage, IsCompleteWhenOnlyNiceToHaveShotsAreMissing) {
    const auto report = judge({{back_after, Need::required}, {left_after, Need::nice_to_have}},
                              {tagged_photo(1, Stage::after, Angle::back)});
    EXPECT_TRUE(report.complete);
    EXPECT_EQ(report.lines[1].verdict, Coverage::missing);
    EXPECT_EQ(report.next_shot, "Evening: every required shot is there.");
}

TEST(Coverage, PrefersAUsablePhotoToASharperFlawedOne) {
    auto sharp = flawed(tagged_photo(1, Stage::after, Angle::back), Flaw::blown_out);
    sharp.measures.focus = 900;
    const auto report =
        judge({{back_after, Need::required}}, {sharp, tagged_photo(2, Stage::after, Angle::back)});
    EXPECT_EQ(report.lines[0].photo, PhotoId{2});
    EXPECT_EQ(report.lines[0].verdict, Coverage::covered);
}

TEST(Coverage, TakesTheSharpestOfTheUsable) {
    auto sharper = tagged_photo(2, Stage::after, Angle::back);
    sharper.measures.focus = 200;
    const auto report = judge({{back_after, Need::required}},
                              {tagged_photo(1, Stage::after, Angle::back), sharper});
    EXPECT_EQ(report.lines[0].photo, PhotoId{2});
}

TEST(Coverage, AnAcceptedFlawedPhotoStandsForItsLine) {
    auto photo = flawed(tagged_photo(1, Stage::after, Angle::back), Flaw::too_dark);
    photo.tags.accepted_because = "the room was dark, the pins show";
    const auto report = judge({{back_after, Need::required}}, {photo});
    EXPECT_EQ(report.lines[0].verdict, Coverage::covered);
    EXPECT_TRUE(report.complete);
}

TEST(Coverage, AWaiverPrintsItsReasonOnlyWhereNothingCovers) {
    const std::vector<Waiver> waivers{{back_after, "she left early"}, {left_after, "not needed"}};
    const auto report = judge({{back_after, Need::required}, {left_after, Need::required}},
                              {tagged_photo(1, Stage::after, Angle::left)}, waivers);
    EXPECT_EQ(report.lines[0].verdict, Coverage::waived);
    EXPECT_EQ(report.lines[0].waived_because, "she left early");
    EXPECT_EQ(report.lines[1].verdict, Coverage::covered);
    EXPECT_EQ(report.lines[1].waived_because, "");
    EXPECT_EQ(report.next_shot, "Evening: every required shot is there or waived.");
}

TEST(Coverage, TheTaggedAngleOfAMirroredPhotoIsTheTruth) {
    auto photo = tagged_photo(1, Stage::after, Angle::left);
    photo.tags.mirrored = true;
    EXPECT_TRUE(judge({{left_after, Need::required}}, {photo}).complete);
}

TEST(Coverage, ABeforePhotoWithoutALookCountsForEveryLookOfItsSitting) {
    auto photo = tagged_photo(1, Stage::before, Angle::front);
    photo.tags.look.reset();
    EXPECT_FALSE(counts_for(photo, evening()));
    photo.tags.sitting = SittingId{5};
    EXPECT_TRUE(counts_for(photo, evening()));
    photo.tags.sitting = SittingId{6};
    EXPECT_FALSE(counts_for(photo, evening()));
}

TEST(Coverage, AnAfterPhotoWithoutALookCountsForNone) {
    auto photo = tagged_photo(1, Stage::after, Angle::front);
    photo.tags.look.reset();
    photo.tags.sitting = SittingId{5};
    EXPECT_FALSE(counts_for(photo, evening()));
}

TEST(Coverage, ABeforePhotoOfAnotherLookDoesNotCount) {
    auto photo = tagged_photo(1, Stage::before, Angle::front, LookId{2});
    photo.tags.sitting = SittingId{5};
    EXPECT_FALSE(counts_for(photo, evening()));
}

// The oracle asks of each line four yes-or-no questions and reads the verdict from a table.
Coverage verdict_by_table(bool any, bool any_usable, bool waiver) {
    if (any_usable) return Coverage::covered;
    if (waiver) return Coverage::waived;
    return any ? Coverage::weak : Coverage::missing;
}

std::vector<Photo> random_tagged_photos() {
    const auto count = *rc::gen::inRange<std::int64_t>(0, 30);
    std::vector<Photo> photos;
    for (std::int64_t id = 1; id <= count; ++id) {
        auto photo =
            tagged_photo(id, *rc::gen::elementOf(all_stages), *rc::gen::elementOf(all_angles),
                         LookId{*rc::gen::inRange<std::int64_t>(1, 3)});
        photo.measures.focus = *rc::gen::inRange(0, 5);
        if (*rc::gen::inRange(0, 4) == 0) photo.tags.look.reset();
        if (*rc::gen::inRange(0, 4) == 0) photo.tags.angle.reset();
        if (*rc::gen::inRange(0, 4) == 0) photo.tags.stage.reset();
        if (*rc::gen::arbitrary<bool>()) photo.tags.sitting = SittingId{*rc::gen::inRange(4, 7)};
        if (*rc::gen::arbitrary<bool>()) photo.flaws = {Flaw::moved};
        if (*rc::gen::inRange(0, 4) == 0) photo.tags.accepted_because = "it will do";
        photos.push_back(photo);
    }
    return photos;
}

ShotList random_list() {
    ShotList list;
    for (const Stage stage : all_stages) {
        for (const Angle angle : all_angles) {
            const int choice = *rc::gen::inRange(0, 4);
            if (choice == 0) list.push_back({{stage, angle}, Need::required});
            if (choice == 1) list.push_back({{stage, angle}, Need::nice_to_have});
        }
    }
    return list;
}

bool counts_by_words(const Photo& photo) {
    const bool tagged = photo.tags.look == LookId{1};
    const bool shared =
        !photo.tags.look && photo.tags.stage == Stage::before && photo.tags.sitting == SittingId{5};
    return tagged || shared;
}

RC_GTEST_PROP(Coverage, EveryLineAgreesWithATable, ()) {
    const auto photos = random_tagged_photos();
    const auto list = random_list();
    std::vector<Waiver> waivers;
    for (const ShotLine& line : list) {
        if (*rc::gen::inRange(0, 3) == 0) waivers.push_back({line.shot, "waived"});
    }
    const auto report = judge(list, photos, waivers);
    RC_ASSERT(report.lines.size() == list.size());

    bool complete = true;
    for (std::size_t i = 0; i < list.size(); ++i) {
        bool any = false;
        bool any_usable = false;
        for (const Photo& photo : photos) {
            const bool here = counts_by_words(photo) && photo.tags.stage == list[i].shot.stage &&
                              photo.tags.angle == list[i].shot.angle;
            any |= here;
            any_usable |=
                here && (photo.flaws.empty() || photo.tags.accepted_because == "it will do");
        }
        const bool waiver = std::find(waivers.begin(), waivers.end(),
                                      Waiver{list[i].shot, "waived"}) != waivers.end();
        const Coverage expected = verdict_by_table(any, any_usable, waiver);
        RC_ASSERT(report.lines[i].wanted == list[i]);
        RC_ASSERT(report.lines[i].verdict == expected);
        RC_ASSERT(report.lines[i].photo.has_value() == any);
        const bool closed = expected == Coverage::covered || expected == Coverage::waived;
        if (list[i].need == Need::required && !closed) complete = false;
    }
    RC_ASSERT(report.complete == complete);
}

RC_GTEST_PROP(Coverage, NoOtherPhotoOfTheLineIsBetterThanTheChosen, ()) {
    const auto photos = random_tagged_photos();
    const auto report = judge(random_list(), photos);
    for (const CoverageLine& line : report.lines) {
        if (!line.photo) continue;
        const auto& chosen = photos[static_cast<std::size_t>(line.photo->value - 1)];
        for (const Photo& photo : photos) {
            const bool same_shot = counts_by_words(photo) &&
                                   photo.tags.stage == line.wanted.shot.stage &&
                                   photo.tags.angle == line.wanted.shot.angle;
            if (!same_shot || usable(photo) < usable(chosen)) continue;
            RC_ASSERT(usable(photo) == usable(chosen));
            RC_ASSERT(photo.measures.focus <= chosen.measures.focus);
        }
    }
}

TEST(WaitsForItsPlace, UntilAngleStageAndLookAreSaid) {
    Photo photo = tagged_photo(1, Stage::after, Angle::back);
    EXPECT_FALSE(waits_for_its_place(photo));
    for (const auto& take_away :
         {+[](Tags& tags) { tags.angle.reset(); }, +[](Tags& tags) { tags.stage.reset(); },
          +[](Tags& tags) { tags.look.reset(); }}) {
        Photo less = photo;
        take_away(less.tags);
        EXPECT_TRUE(waits_for_its_place(less));
    }
}

TEST(WaitsForItsPlace, ABeforePhotoNeedsNoLook) {
    Photo photo = tagged_photo(1, Stage::before, Angle::back);
    photo.tags.look.reset();
    EXPECT_FALSE(waits_for_its_place(photo));
}

TEST(PhotosOfShot, ComeUsableFirstThenSharpest) {
    Photo sharp_but_dark = flawed(tagged_photo(1, Stage::after, Angle::back), Flaw::too_dark);
    sharp_but_dark.measures.focus = 9;
    Photo soft = tagged_photo(2, Stage::after, Angle::back);
    soft.measures.focus = 3;
    Photo sharp = tagged_photo(3, Stage::after, Angle::back);
    sharp.measures.focus = 5;
    const Photo elsewhere = tagged_photo(4, Stage::after, Angle::left);
    const std::vector photos{sharp_but_dark, soft, sharp, elsewhere};
    std::vector<std::int64_t> order;
    for (const Photo& photo : photos_of_shot(evening(), back_after, photos)) {
        order.push_back(photo.id.value);
    }
    EXPECT_EQ(order, (std::vector<std::int64_t>{3, 2, 1}));
}

}  // namespace
}  // namespace quarterturn
