// How a pair was laid stays with it, until something that it was laid by is another.

#include "indexer/portfolio/kept_laying.h"

#include <gtest/gtest.h>

#include "indexer/looks/pairs.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class KeptLayingTest : public testing::Test, public ExampleLibrary {
  protected:
    KeptLayingTest() {
        laid.first_aspect = 0.75;
        laid.second_aspect = 0.8;
        laid.alignment.second_onto_first = {1.05, 0.04, -0.02, 0.03};
        laid.alignment.certain = true;
        laid.first_points = points;
        laid.hair.left = 0.2;
        laid.hair.right = 0.55;
        bring_pairs_up_to_date(library);
    }

    PhotoId add(const std::string& name, Stage stage) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:30:00"));
        photo.measures = {5, 0, 0.5, 0, 0};
        photo.tags.sitting = trial;
        photo.tags.look = look;
        photo.tags.stage = stage;
        photo.tags.angle = Angle::back;
        return library.photos().add(photo);
    }

    Photo photo(PhotoId id) { return library.photos().find(id).value(); }
    Pair pair() { return library.pairs().all().front(); }

    void keep() {
        const Photo one = photo(before), other = photo(after);
        keep_laying(library,
                    {one, other, library.head_points().of(before), library.head_points().of(after)},
                    laid);
    }
    std::optional<LaidPair> kept() {
        const auto all = kept_layings(library, std::array{pair().id});
        return all.empty() ? std::nullopt : std::optional(all.begin()->second);
    }

    PhotoId before = add("QTA_0001.jpg", Stage::before);
    PhotoId after = add("QTA_0002.jpg", Stage::after);
    HeadPoints points{{0.48, 0.125}, {0.5, 0.61}};
    LaidPair laid;
};

TEST_F(KeptLayingTest, ShowsTheSameWindowAsWhenItWasLaid) {
    EXPECT_FALSE(kept());
    keep();
    const auto now = kept();
    ASSERT_TRUE(now);
    EXPECT_TRUE(now->alignment.sure());
    EXPECT_EQ(now->second_aspect, laid.second_aspect);
    const Box window = window_of(laid, 0.8);
    const Box again = window_of(*now, 0.8);
    EXPECT_DOUBLE_EQ(again.x, window.x);
    EXPECT_DOUBLE_EQ(again.y, window.y);
    EXPECT_DOUBLE_EQ(again.height, window.height);
    EXPECT_EQ(now->alignment.second_onto_first.across, 0.04);
}

TEST_F(KeptLayingTest, GoesWhenAPointOrTheSideOfThePictureIsAnother) {
    keep();
    library.head_points().set(before, points);
    EXPECT_FALSE(kept()) << "points were set";
    keep();
    library.head_points().clear(before);
    EXPECT_FALSE(kept()) << "points were cleared";
    keep();
    Tags tags = photo(after).tags;
    tags.mirrored = true;
    library.history().apply({"tagged", {{after, tags}}, {}});
    bring_pairs_up_to_date(library);
    EXPECT_FALSE(kept()) << "it is shown the other way round";
}

TEST_F(KeptLayingTest, GoesWhenAnotherPhotoStandsInThePair) {
    keep();
    const PhotoId other = add("QTA_0003.jpg", Stage::after);
    bring_pairs_up_to_date(library);
    choose_frames(library, pair().id, std::nullopt, other);
    ASSERT_EQ(pair().made.second, other);
    EXPECT_FALSE(kept());
}

TEST_F(KeptLayingTest, IsNotKeptWhereItWasLaidByWhatIsNoLongerSo) {
    const Photo one = photo(before), other = photo(after);
    library.head_points().set(before, points);
    keep_laying(library, {one, other, std::nullopt, std::nullopt}, laid);
    EXPECT_FALSE(kept()) << "while it was laid she set points";
}

TEST_F(KeptLayingTest, StaysAsItIsKept) {
    keep();
    laid.alignment.second_onto_first.across = 0.5;
    keep();
    EXPECT_EQ(kept()->alignment.second_onto_first.across, 0.04);
}

}  // namespace
}  // namespace quarterturn
