#include "indexer/intake/day_photos.h"

#include <gtest/gtest.h>

#include "indexer/intake/sort.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

// Mira sits from 9:00 to 11:00 of her wedding day, and is photographed afterwards.
struct DayPhotosTest : testing::Test {
    PhotoId add(const std::string& name, const char* taken) {
        return example.library.photos().add(example_photo(name, taken_at(taken)));
    }
    Tags tags_of(PhotoId photo) { return example.library.photos().find(photo)->tags; }
    std::vector<DayProposal> proposed() {
        return propose_day_photos(example.library, example.wedding, seats);
    }

    ExampleLibrary example;
    std::vector<Seat> seats{{example.mira, SeatPart::set, 0, 9 * 60, 11 * 60}};
    PhotoId of_trial = add("TRIAL.jpg", "2026-11-07T11:00:00");
    PhotoId first = add("DAY_1.jpg", "2026-11-21T11:01:00");
    PhotoId second = add("DAY_2_back.jpg", "2026-11-21T11:01:20");
    PhotoId early = add("EARLY.jpg", "2026-11-21T07:00:00");
};

TEST_F(DayPhotosTest, AreProposedToTheClientWhoseSeatHasEnded) {
    const auto proposals = proposed();
    ASSERT_EQ(proposals.size(), 3U);
    EXPECT_EQ(proposals[0].photo.id, early);
    EXPECT_FALSE(proposals[0].look.has_value());
    EXPECT_EQ(proposals[1].look, example.look);
    EXPECT_EQ(proposals[1].angle, Angle::left);
    EXPECT_EQ(proposals[2].look, example.look);
}

TEST_F(DayPhotosTest, AreNobodysWhereNothingIsPlanned) {
    for (const DayProposal& each : propose_day_photos(example.library, example.wedding, {})) {
        EXPECT_FALSE(each.look.has_value());
    }
}

TEST_F(DayPhotosTest, ConfirmedStandAtAWeddingDaySittingWithTheHoursOfHerSeats) {
    EXPECT_EQ(place_day_photos(example.library, example.wedding, seats, proposed()), 2);
    const auto sittings = example.library.sittings().all();
    ASSERT_EQ(sittings.size(), 2U);
    const auto sitting = std::optional(sittings.back());
    EXPECT_EQ(sitting->kind, SittingKind::wedding_day);
    EXPECT_EQ(sitting->starts, at("2026-11-21T09:00"));
    EXPECT_EQ(sitting->ends, at("2026-11-21T11:01:20"));
    const Tags tags = tags_of(first);
    EXPECT_EQ(tags.sitting, sitting->id);
    EXPECT_EQ(tags.look, example.look);
    EXPECT_EQ(tags.stage, Stage::after);
    EXPECT_EQ(tags.angle, Angle::left);
    EXPECT_FALSE(tags_of(early).look.has_value());
    EXPECT_FALSE(tags_of(of_trial).look.has_value());
    const auto look = example.library.looks().find(example.look);
    EXPECT_EQ(look->sittings, (std::vector{example.trial, sitting->id}));
    EXPECT_EQ(proposed().size(), 1U);
}

TEST_F(DayPhotosTest, AreTakenBackInOneStepWithTheSitting) {
    const Tags before = tags_of(first);
    const auto sittings = example.library.sittings().all().size();
    place_day_photos(example.library, example.wedding, seats, proposed());
    example.reopen();
    EXPECT_EQ(undo(example.library), "placed 2 photos of Okonjo-Lindqvist and Vale");
    EXPECT_EQ(tags_of(first), before);
    EXPECT_EQ(example.library.sittings().all().size(), sittings);
    EXPECT_EQ(example.library.looks().find(example.look)->sittings, std::vector{example.trial});
    EXPECT_EQ(redo(example.library), "placed 2 photos of Okonjo-Lindqvist and Vale");
    EXPECT_EQ(tags_of(first).look, example.look);
    EXPECT_EQ(tags_of(first).sitting, example.library.sittings().all().back().id);
}

TEST_F(DayPhotosTest, AreTakenBackAfterOthersFellIntoTheSittingByTheirTime) {
    place_day_photos(example.library, example.wedding, seats, proposed());
    const PhotoId late = add("LATE.jpg", "2026-11-21T09:30:00");
    sort_by_time(example.library);
    ASSERT_TRUE(tags_of(late).sitting.has_value());
    EXPECT_TRUE(undo(example.library));
    EXPECT_FALSE(tags_of(late).sitting.has_value());
    EXPECT_EQ(example.library.sittings().all().size(), 1U);
}

TEST_F(DayPhotosTest, ALookOfSomebodyElseIsRefusedAndNothingIsPlaced) {
    Look other;
    other.client = example.library.clients().add(client_called("Tove Aldermoor"));
    other.name = "half up";
    auto proposals = proposed();
    proposals[2].look = example.library.looks().add(other);
    EXPECT_THROW(place_day_photos(example.library, example.wedding, seats, proposals), StoreError);
    EXPECT_FALSE(tags_of(first).look.has_value());
}

}  // namespace
}  // namespace quarterturn
