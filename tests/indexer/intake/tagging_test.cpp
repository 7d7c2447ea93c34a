#include "indexer/intake/tagging.h"

#include "indexer/intake/sort.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

struct TaggingTest : testing::Test, ExampleLibrary {
    TaggingTest() {
        for (const char* name : {"a.jpg", "b.jpg", "c.jpg"}) {
            Photo photo = example_photo(name, taken_at("2026-11-07T10:30:00"));
            photo.tags.sitting = trial;
            photos.push_back(library.photos().add(photo));
        }
    }

    Tags tags(std::size_t i) { return library.photos().find(photos[i])->tags; }

    std::string refusal(const TagWishes& wishes) {
        try {
            tag(library, photos, wishes);
        } catch (const StoreError& error) {
            return error.what();
        }
        return "nothing was refused";
    }

    LookId look_of_another() {
        Look curls;
        curls.client = library.clients().add(client_called("Ines Vale"));
        curls.name = "loose curls";
        return library.looks().add(curls);
    }

    std::vector<PhotoId> photos;
};

TEST_F(TaggingTest, TagsManyAtOnceAsOneActionThatSaysWhatItWas) {
    tag(library, photos, {.angle = Angle::left, .stage = Stage::after, .look = look});
    for (std::size_t i = 0; i < photos.size(); ++i) {
        EXPECT_EQ(tags(i).angle, Angle::left);
        EXPECT_EQ(tags(i).stage, Stage::after);
        EXPECT_EQ(tags(i).look, look);
    }
    EXPECT_EQ(undo(library), "tagged 3 photos left, after, look 'low twisted bun'");
    EXPECT_EQ(tags(2).angle, std::nullopt);
}

TEST_F(TaggingTest, ChangesOnlyWhatWasWished) {
    tag(library, photos, {.angle = Angle::left, .note = "veil on"});
    tag(library, std::vector{photos[0]}, {.angle = std::optional<Angle>{}});
    EXPECT_EQ(tags(0).angle, std::nullopt);
    EXPECT_EQ(tags(0).note, "veil on");
    EXPECT_EQ(tags(1).angle, Angle::left);
    EXPECT_EQ(undo(library), "tagged a.jpg no angle");
}

TEST_F(TaggingTest, AcceptsAFlawedPhotoWithAReasonAndTakesItBack) {
    tag(library, photos, {.accepted_because = "the only one with the veil"});
    EXPECT_EQ(tags(1).accepted_because, "the only one with the veil");
    tag(library, photos, {.accepted_because = ""});
    EXPECT_EQ(tags(1).accepted_because, "");
}

TEST_F(TaggingTest, RefusesTheLookOfAClientWhoIsNotInThePicture) {
    const LookId curls = look_of_another();
    const std::string sentence = refusal({.look = curls});
    EXPECT_NE(sentence.find("add Ines Vale to the clients shown"), std::string::npos) << sentence;
    EXPECT_EQ(tags(0).look, std::nullopt);
    const ClientId ines = library.looks().find(curls)->client;
    tag(library, photos, {.look = curls, .shown = std::vector{ines}});
    EXPECT_EQ(tags(0).look, curls);
    EXPECT_EQ(tags(0).shown, std::vector{ines});
}

TEST_F(TaggingTest, TheSittingsOwnClientIsNotShownBesidesHerself) {
    tag(library, photos, {.shown = std::vector{mira}});
    EXPECT_TRUE(tags(0).shown.empty());
}

TEST_F(TaggingTest, RefusesWhatIsNotThereAndTagsNothing) {
    EXPECT_NE(refusal({.angle = Angle::left, .look = LookId{99}}).find("99"), std::string::npos);
    EXPECT_NE(refusal({.shown = std::vector{ClientId{98}}}).find("98"), std::string::npos);
    photos.push_back(PhotoId{97});
    EXPECT_NE(refusal({.angle = Angle::left}).find("97"), std::string::npos);
    EXPECT_EQ(tags(0).angle, std::nullopt);
    EXPECT_EQ(undo(library), std::nullopt);
}

TEST_F(TaggingTest, ConfirmsSuggestionsWhereThereIsNoTagYet) {
    library.photos().set_suggestion(photos[0], {.angle = Angle::back,
                                                .stage = Stage::after,
                                                .angle_source = "file name",
                                                .stage_source = "after the last gap"});
    library.photos().set_suggestion(
        photos[1],
        {.angle = Angle::back, .stage = {}, .angle_source = "file name", .stage_source = {}});
    tag(library, std::vector{photos[1]}, {.angle = Angle::right});
    EXPECT_EQ(confirm_suggestions(library, photos), 1);
    EXPECT_EQ(tags(0).angle, Angle::back);
    EXPECT_EQ(tags(0).stage, Stage::after);
    EXPECT_EQ(tags(1).angle, Angle::right);
    EXPECT_EQ(undo(library), "confirmed what was suggested for a.jpg");
    EXPECT_EQ(confirm_suggestions(library, std::vector{photos[2]}), 0);
}

TEST_F(TaggingTest, PlacingByHandCanBeUndone) {
    place_by_hand(library, std::vector{photos[0]}, std::nullopt);
    EXPECT_EQ(tags(0).sitting, std::nullopt);
    sort_by_time(library);
    EXPECT_EQ(tags(0).sitting, std::nullopt);
    EXPECT_EQ(undo(library), "placed a.jpg in no sitting");
    EXPECT_EQ(tags(0).sitting, trial);
    EXPECT_FALSE(tags(0).placed_by_hand);
    EXPECT_THROW(place_by_hand(library, photos, SittingId{99}), StoreError);
}

}  // namespace
}  // namespace quarterturn
