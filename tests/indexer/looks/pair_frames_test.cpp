#include "indexer/looks/pair_frames.h"

#include <gtest/gtest.h>

#include "indexer/looks/pairs.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class PairFramesTest : public testing::Test, public ExampleLibrary {
  protected:
    PhotoId add(const std::string& name, const char* taken, Stage stage, Angle angle,
                SittingId sitting, double focus = 5) {
        Photo photo = example_photo(name, taken_at(taken));
        photo.measures.focus = focus;
        photo.tags.sitting = sitting;
        photo.tags.look = look;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        return library.photos().add(photo);
    }

    SittingId add_day() {
        Sitting sitting;
        sitting.client = mira;
        sitting.wedding = wedding;
        sitting.kind = SittingKind::wedding_day;
        sitting.starts = at("2026-11-21T08:00");
        sitting.ends = at("2026-11-21T11:00");
        return library.sittings().add(sitting);
    }

    Pair pair_of(PairKind kind) {
        const PairWall wall(library, date_of(at("2026-11-07T12:00")));
        for (const Pair& pair : wall.pairs()) {
            if (pair.made.place.kind == kind) return pair;
        }
        throw std::runtime_error("no such pair");
    }

    static std::vector<PhotoId> ids(const std::vector<Photo>& photos) {
        std::vector<PhotoId> result;
        for (const Photo& photo : photos) result.push_back(photo.id);
        return result;
    }

    SittingId day = add_day();
    PhotoId before = add("1.jpg", "2026-11-07T10:00:00", Stage::before, Angle::back, trial);
    PhotoId soft = add("2.jpg", "2026-11-07T11:30:00", Stage::after, Angle::back, trial, 2);
    PhotoId sharp = add("3.jpg", "2026-11-07T11:20:00", Stage::after, Angle::back, trial, 6);
    PhotoId other_angle = add("4.jpg", "2026-11-07T11:40:00", Stage::after, Angle::left, trial);
    PhotoId worn = add("5.jpg", "2026-11-21T10:00:00", Stage::after, Angle::back, day);
};

TEST_F(PairFramesTest, AreThoseOfTheAngleAndStageInTheOrderTheyWereTaken) {
    const PairFrames frames = frames_for(library, pair_of(PairKind::before_and_after));
    EXPECT_EQ(ids(frames.first), std::vector{before});
    EXPECT_EQ(ids(frames.second), (std::vector{sharp, soft, worn}));
}

TEST_F(PairFramesTest, OfATrialAndADayAreOfThatTrialAndOfADay) {
    const PairFrames frames = frames_for(library, pair_of(PairKind::trial_and_day));
    EXPECT_EQ(ids(frames.first), (std::vector{sharp, soft}));
    EXPECT_EQ(ids(frames.second), std::vector{worn});
}

// What is offered can be chosen, and nothing else.
TEST_F(PairFramesTest, EveryOneOfThemCanBeChosen) {
    for (const PairKind kind : {PairKind::before_and_after, PairKind::trial_and_day}) {
        const Pair pair = pair_of(kind);
        const PairFrames frames = frames_for(library, pair);
        for (const PhotoId photo : ids(frames.first)) {
            EXPECT_NO_THROW(choose_frames(library, pair.id, photo, std::nullopt));
        }
        for (const PhotoId photo : {before, soft, sharp, other_angle, worn}) {
            const bool offered = std::ranges::count(ids(frames.second), photo) > 0;
            bool taken = true;
            try {
                choose_frames(library, pair.id, std::nullopt, photo);
            } catch (const StoreError&) {
                taken = false;
            }
            EXPECT_EQ(taken, offered) << photo.value;
        }
    }
}

TEST_F(PairFramesTest, ProgressHasTheSharpestOfEachSittingAndStageByDate) {
    const auto progress = progress_of(library, mira);
    ASSERT_EQ(progress.size(), 2U);
    std::vector<PhotoId> back;
    for (const ProgressFrame& frame : progress.at(Angle::back)) back.push_back(frame.photo.id);
    EXPECT_EQ(back, (std::vector{before, sharp, worn}));
    EXPECT_EQ(progress.at(Angle::back).back().sitting, SittingKind::wedding_day);
    EXPECT_EQ(progress.at(Angle::left).size(), 1U);
}

TEST_F(PairFramesTest, ProgressOfAClientWithoutPhotosIsEmpty) {
    EXPECT_TRUE(progress_of(library, library.clients().add(client_called("Ada"))).empty());
}

}  // namespace
}  // namespace quarterturn
