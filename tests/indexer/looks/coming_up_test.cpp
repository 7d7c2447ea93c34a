#include "indexer/looks/coming_up.h"

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Date day(const char* iso) {
    return parse_date(iso).value();
}

struct ComingUp {
    std::vector<Occasion> ahead;
    std::vector<MonthCount> past;
};

ComingUp coming_up(Library& library, Date today) {
    ComingUp coming{occasions_ahead(library, today), past_months(library, today)};
    judge(library, coming.ahead);
    return coming;
}

class ComingUpTest : public testing::Test {
  protected:
    Photo trial_photo(const std::string& name, Stage stage, Angle angle) {
        Photo photo = example_photo(name, taken_at("2026-11-07T11:00:00"));
        photo.tags.sitting = example.trial;
        photo.tags.look = example.look;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        return photo;
    }
    void add_all_required(Flaw flaw, Angle flawed) {
        int number = 0;
        for (const Stage stage : {Stage::before, Stage::after}) {
            for (const Angle angle : quarter_angles) {
                Photo photo = trial_photo(std::to_string(++number) + ".jpg", stage, angle);
                if (angle == flawed && stage == Stage::after) photo.flaws = {flaw};
                library.photos().add(photo);
            }
        }
    }
    const LookStanding& standing(const Occasion& occasion) {
        return *occasion.clients.front().looks.front().standing;
    }

    ExampleLibrary example;
    Library& library = example.library;
};

TEST_F(ComingUpTest, TodayIsTheFirstOfWhatIsAheadAndYesterdayIsPast) {
    const ComingUp on_the_day = coming_up(library, day("2026-11-07"));
    ASSERT_EQ(on_the_day.ahead.size(), 2u);
    EXPECT_EQ(on_the_day.ahead[0].date, day("2026-11-07"));
    EXPECT_FALSE(on_the_day.ahead[0].is_wedding);
    EXPECT_TRUE(on_the_day.ahead[1].is_wedding);
    EXPECT_TRUE(on_the_day.past.empty());

    const ComingUp later = coming_up(library, day("2026-11-08"));
    ASSERT_EQ(later.ahead.size(), 1u);
    ASSERT_EQ(later.past.size(), 1u);
    EXPECT_EQ(later.past[0], (MonthCount{std::chrono::year(2026) / std::chrono::November, 0, 1}));
    const auto past = past_occasions(library, {.end = day("2026-11-08")});
    ASSERT_EQ(past.size(), 1u);
    EXPECT_EQ(past[0].sittings.front().id, example.trial);
}

TEST_F(ComingUpTest, PastIsNewestFirstAndJudgedOnlyWhenAsked) {
    auto past = past_occasions(library, {.end = day("2027-01-01")});
    ASSERT_EQ(past.size(), 2u);
    EXPECT_TRUE(past[0].is_wedding);
    EXPECT_FALSE(past[0].clients.front().looks.front().standing);
    judge(library, past);
    EXPECT_TRUE(past[0].clients.front().looks.front().standing);
}

TEST_F(ComingUpTest, AWeddingDaySittingBelongsToItsWedding) {
    Sitting morning;
    morning.client = example.mira;
    morning.wedding = example.wedding;
    morning.kind = SittingKind::wedding_day;
    morning.starts = at("2026-11-21T08:00");
    morning.ends = at("2026-11-21T10:00");
    library.sittings().add(morning);
    const ComingUp coming = coming_up(library, day("2026-11-10"));
    ASSERT_EQ(coming.ahead.size(), 1u);
    ASSERT_EQ(coming.ahead[0].sittings.size(), 1u);
    EXPECT_EQ(coming.ahead[0].sittings[0].kind, SittingKind::wedding_day);
    const MonthCount november{std::chrono::year(2026) / std::chrono::November, 1, 1};
    EXPECT_EQ(coming_up(library, day("2026-12-01")).past, std::vector{november});
}

TEST_F(ComingUpTest, SaysWhoIsInThePartyAndInWhatRole) {
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    for (const Occasion& occasion : coming.ahead) {
        ASSERT_EQ(occasion.clients.size(), 1u);
        EXPECT_EQ(occasion.clients[0].client.name, "Mira Okonjo-Lindqvist");
        EXPECT_EQ(occasion.clients[0].role, "bride");
        ASSERT_EQ(occasion.clients[0].looks.size(), 1u);
        EXPECT_EQ(occasion.clients[0].looks[0].look.id, example.look);
    }
}

TEST_F(ComingUpTest, WithoutPhotosTheNextThingIsToBringThemIn) {
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    const LookStanding& stands = standing(coming.ahead[0]);
    EXPECT_EQ(stands.next, NextStep::bring_photos_in);
    ASSERT_FALSE(stands.lacks.empty());
    EXPECT_EQ(stands.lacks[0].sentence, "No photos yet.");
    for (const Quarter quarter : stands.ring) EXPECT_EQ(quarter, Quarter::missing);
}

TEST_F(ComingUpTest, PhotosWithoutAnAngleAreNextToGoRoundTheHead) {
    Photo photo = example_photo("new.jpg", taken_at("2026-11-07T11:00:00"));
    photo.tags.sitting = example.trial;
    library.photos().add(photo);
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    EXPECT_EQ(standing(coming.ahead[0]).waiting, 1);
    EXPECT_EQ(standing(coming.ahead[0]).next, NextStep::go_round_the_head);
}

TEST_F(ComingUpTest, AWeakPhotoIsNamedWithItsFlawAndLeadsToItsShot) {
    add_all_required(Flaw::out_of_focus, Angle::back);
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    const LookStanding& stands = standing(coming.ahead[0]);
    ASSERT_FALSE(stands.lacks.empty());
    EXPECT_EQ(stands.lacks[0].sentence, "The best after photo of the back is out of focus.");
    EXPECT_EQ(stands.lacks[0].shot, (Shot{Stage::after, Angle::back}));
    const Ring expected{Quarter::covered, Quarter::covered, Quarter::covered, Quarter::weak};
    EXPECT_EQ(stands.ring, expected);
}

TEST_F(ComingUpTest, WithAllPhotosTheRecipeIsNext) {
    add_all_required(Flaw::moved, Angle::crown);
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    EXPECT_EQ(standing(coming.ahead[0]).next, NextStep::write_recipe);
}

TEST_F(ComingUpTest, ASignedOffLookLacksNothing) {
    SignOff sign_off;
    sign_off.look = example.look;
    sign_off.signed_at = at("2026-11-07T12:30");
    library.sign_offs().add(sign_off);
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    EXPECT_EQ(standing(coming.ahead[0]).signed_at, at("2026-11-07T12:30"));
    EXPECT_TRUE(standing(coming.ahead[0]).lacks.empty());
    EXPECT_EQ(standing(coming.ahead[0]).next, NextStep::nothing);
}

TEST_F(ComingUpTest, ALookWithAListAndWaiversOfItsOwnIsJudgedByThem) {
    library.looks().set_shot_list(example.look, {{{Stage::after, Angle::left}, Need::required},
                                                 {{Stage::after, Angle::back}, Need::required}});
    library.looks().waive(example.look, {{Stage::after, Angle::back}, "veil covers it"});
    library.photos().add(trial_photo("left.jpg", Stage::after, Angle::left));
    const ComingUp coming = coming_up(library, day("2026-11-07"));
    EXPECT_EQ(standing(coming.ahead[0]).ring[0], Quarter::covered);
    EXPECT_EQ(standing(coming.ahead[0]).ring[3], Quarter::waived);
    EXPECT_EQ(standing(coming.ahead[0]).next, NextStep::write_recipe);
}

}  // namespace
}  // namespace quarterturn
