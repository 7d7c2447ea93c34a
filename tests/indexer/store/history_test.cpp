#include "indexer/store/history.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Tags tagged(Angle angle) {
    Tags tags;
    tags.angle = angle;
    return tags;
}

class HistoryTest : public testing::Test, public ExampleLibrary {
  protected:
    PhotoId add(const std::string& name, const char* taken = "2026-11-07T10:12:03.61") {
        Photo photo = example_photo(name, taken_at(taken));
        photo.file.device = phone;
        return library.photos().add(photo);
    }
    Tags tags(PhotoId photo) { return library.photos().find(photo)->tags; }
    void apply(const std::string& said, PhotoId photo, const Tags& tags) {
        library.history().apply({said, {{photo, tags}}, {}});
    }
};

TEST_F(HistoryTest, UndoesAndDoesAgainOverARestart) {
    const PhotoId photo = add("one.jpg");
    apply("tagged 1 photo left", photo, tagged(Angle::left));
    reopen();
    EXPECT_EQ(library.history().undo(), "tagged 1 photo left");
    EXPECT_EQ(tags(photo), Tags{});
    reopen();
    EXPECT_EQ(library.history().redo(), "tagged 1 photo left");
    EXPECT_EQ(tags(photo), tagged(Angle::left));
    EXPECT_EQ(library.history().redo(), std::nullopt);
}

TEST_F(HistoryTest, HasNothingToUndoAtFirst) {
    EXPECT_EQ(library.history().undo(), std::nullopt);
    EXPECT_EQ(library.history().redo(), std::nullopt);
}

TEST_F(HistoryTest, UndoesInTurnAndDoesAgainInTurn) {
    const PhotoId photo = add("one.jpg");
    apply("left", photo, tagged(Angle::left));
    apply("back", photo, tagged(Angle::back));
    EXPECT_EQ(library.history().undo(), "back");
    EXPECT_EQ(library.history().undo(), "left");
    EXPECT_EQ(library.history().redo(), "left");
    EXPECT_EQ(tags(photo), tagged(Angle::left));
    EXPECT_EQ(library.history().redo(), "back");
    EXPECT_EQ(tags(photo), tagged(Angle::back));
}

TEST_F(HistoryTest, DropsWhatWasUndoneWhenSomethingNewIsDone) {
    const PhotoId photo = add("one.jpg");
    apply("left", photo, tagged(Angle::left));
    library.history().undo();
    apply("back", photo, tagged(Angle::back));
    EXPECT_EQ(library.history().redo(), std::nullopt);
    EXPECT_EQ(library.history().undo(), "back");
    EXPECT_EQ(library.history().undo(), std::nullopt);
}

TEST_F(HistoryTest, MakesNoActionOfNoChange) {
    const PhotoId photo = add("one.jpg");
    apply("left", photo, tagged(Angle::left));
    library.history().undo();
    apply("nothing", photo, Tags{});
    library.history().apply({"nothing", {}, {{phone, std::chrono::seconds{0}}}});
    library.history().apply({"nothing", {}, {}});
    EXPECT_EQ(library.history().redo(), "left") << "what changes nothing drops nothing";
}

TEST_F(HistoryTest, UndoesOnlyThePhotosThatChanged) {
    const PhotoId one = add("one.jpg");
    const PhotoId two = add("two.jpg");
    apply("left", one, tagged(Angle::left));
    library.history().apply(
        {"both left", {{one, tagged(Angle::left)}, {two, tagged(Angle::left)}}, {}});
    library.history().undo();
    EXPECT_EQ(tags(one), tagged(Angle::left));
    EXPECT_EQ(tags(two), Tags{});
}

TEST_F(HistoryTest, LeavesAPlaceByTimeThatAPhotoGotSince) {
    const PhotoId photo = add("one.jpg");
    apply("left", photo, tagged(Angle::left));
    library.photos().set_sitting_by_time(photo, trial);
    library.history().undo();
    EXPECT_EQ(tags(photo).angle, std::nullopt);
    EXPECT_EQ(tags(photo).sitting, trial);
    library.history().redo();
    EXPECT_EQ(tags(photo).angle, Angle::left);
    EXPECT_EQ(tags(photo).sitting, trial);
}

TEST_F(HistoryTest, TakesTheLastWordOnAPhoto) {
    const PhotoId photo = add("one.jpg");
    library.history().apply(
        {"twice", {{photo, tagged(Angle::left)}, {photo, tagged(Angle::back)}}, {}});
    EXPECT_EQ(tags(photo), tagged(Angle::back));
    library.history().undo();
    EXPECT_EQ(tags(photo), Tags{});
}

TEST_F(HistoryTest, AppliesAllOrNothing) {
    const PhotoId photo = add("one.jpg");
    Tags wrong;
    wrong.look = LookId{77};
    EXPECT_THROW(library.history().apply(
                     {"wrong look", {{photo, tagged(Angle::left)}, {add("two.jpg"), wrong}}, {}}),
                 StoreError);
    EXPECT_THROW(library.history().apply(
                     {"no such device", {{photo, tagged(Angle::left)}}, {{DeviceId{77}}}}),
                 StoreError);
    try {
        library.history().apply(
            {"no such photo", {{photo, tagged(Angle::left)}, {PhotoId{77}, {}}}, {}});
        FAIL() << "there is no such photo";
    } catch (const StoreError& error) {
        EXPECT_STREQ(error.what(), "There is no photo 77 in the library.");
    }
    EXPECT_EQ(tags(photo), Tags{});
    EXPECT_EQ(library.history().undo(), std::nullopt);
}

TEST_F(HistoryTest, MovesTheMomentsOfADevicesPhotosAndTheirOrder) {
    const PhotoId slow = add("slow.jpg");
    Photo other = example_photo("other.jpg", taken_at("2026-11-07T10:30:00"));
    const PhotoId steady = library.photos().add(other);
    Photo timeless = example_photo("timeless.jpg");
    timeless.file.device = phone;
    const PhotoId unknown = library.photos().add(timeless);
    library.history().apply({"shifted", {}, {{phone, std::chrono::minutes{47}}}});
    EXPECT_EQ(library.photos().find(slow)->moment, at("2026-11-07T10:59:03.61"));
    EXPECT_EQ(library.photos().find(slow)->file.taken->local, at("2026-11-07T10:12:03.61"));
    EXPECT_EQ(library.photos().find(steady)->moment, at("2026-11-07T10:30:00"));
    EXPECT_EQ(library.photos().find(unknown)->moment, std::nullopt);
    EXPECT_EQ(library.photos().all().front().id, steady);
    EXPECT_EQ(library.devices().find(phone)->clock_shift, std::chrono::minutes{47});
    EXPECT_EQ(library.history().undo(), "shifted");
    EXPECT_EQ(library.photos().find(slow)->moment, at("2026-11-07T10:12:03.61"));
    EXPECT_EQ(library.photos().all().front().id, slow);
    EXPECT_EQ(library.devices().find(phone)->clock_shift, std::chrono::seconds{0});
}

TEST_F(HistoryTest, UndoesAShiftAndItsPlacingsAsOne) {
    const PhotoId photo = add("one.jpg");
    Tags placed;
    placed.sitting = trial;
    library.history().apply({"shifted", {{photo, placed}}, {{phone, std::chrono::minutes{-47}}}});
    EXPECT_EQ(library.photos().find(photo)->moment, at("2026-11-07T09:25:03.61"));
    EXPECT_EQ(library.history().undo(), "shifted");
    EXPECT_EQ(tags(photo), Tags{});
    EXPECT_EQ(library.photos().find(photo)->moment, at("2026-11-07T10:12:03.61"));
}

TEST_F(HistoryTest, RefusesAShiftThatNoClockHas) {
    const PhotoId photo = add("one.jpg");
    for (const auto shift : {std::chrono::seconds::max(), std::chrono::seconds::min()}) {
        EXPECT_THROW(library.history().apply({"shifted", {}, {{phone, shift}}}), StoreError);
    }
    // Within what a clock can be off, but past the last time that can be told (year 2262).
    const PhotoId late = add("late.jpg", "2200-01-01T00:00:00");
    EXPECT_THROW(library.history().apply({"shifted", {}, {{phone, std::chrono::years{100}}}}),
                 StoreError);
    EXPECT_EQ(library.photos().find(photo)->moment, at("2026-11-07T10:12:03.61"));
    EXPECT_EQ(library.photos().find(late)->moment, at("2200-01-01T00:00:00"));
}

}  // namespace
}  // namespace quarterturn
