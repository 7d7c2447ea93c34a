#include "indexer/store/photo_table.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

std::vector<std::string> names(const std::vector<Photo>& photos) {
    std::vector<std::string> result;
    for (const Photo& photo : photos) result.push_back(photo.file.name);
    return result;
}

using Names = std::vector<std::string>;

// Every field differs from its default and from its neighbours.
Photo full_photo(const ExampleLibrary& example) {
    Photo photo = example_photo("IMG_0042.HEIC");
    photo.file.orientation = 6;
    photo.file.taken = CaptureTime{at("2026-11-07T10:12:03.610"), 3, std::chrono::minutes{-210}};
    photo.file.device = example.phone;
    photo.measures = {.focus = 181.25,
                      .motion = 0.125,
                      .mean_light = 0.5,
                      .clipped_shadows = 0.25,
                      .clipped_highlights = 0.0625};
    photo.fingerprint = 0xF123456789ABCDEFULL;  // the highest bit is set
    photo.head_signs = HeadSigns{false, true, false};
    photo.flaws = {Flaw::too_dark, Flaw::out_of_focus};
    photo.suggestion = {.angle = Angle::left_three_quarter,
                        .stage = Stage::during,
                        .angle_source = "keyword 'left'",
                        .stage_source = "taken after the last gap"};
    photo.tags = {.sitting = example.trial,
                  .placed_by_hand = true,
                  .look = example.look,
                  .stage = Stage::after,
                  .angle = Angle::crown,
                  .mirrored = true,
                  .shown = {example.mira},
                  .note = "the pin above the ear — 髪",
                  .accepted_because = "the only one"};
    return photo;
}

TEST(PhotoTable, KeepsEveryFieldOverARestart) {
    ExampleLibrary example;
    Photo photo = full_photo(example);
    photo.id = example.library.photos().add(photo);
    photo.moment = photo.file.taken->local;
    example.reopen();
    EXPECT_EQ(example.library.photos().find(photo.id), photo);
}

TEST(PhotoTable, KeepsUnknownAsUnknown) {
    ExampleLibrary example;
    Photo photo = example_photo("scan.png");
    photo.id = example.library.photos().add(photo);
    EXPECT_EQ(example.library.photos().find(photo.id), photo);
}

TEST(PhotoTable, ListsByMomentWithUnknownLast) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    photos.add(example_photo("unknown.jpg"));
    photos.add(example_photo("late.jpg", taken_at("2026-11-07T11:00:00")));
    photos.add(example_photo("early.jpg", taken_at("2026-11-07T10:59:59.9")));
    photos.add(example_photo("also late.jpg", taken_at("2026-11-07T11:00:00")));
    photos.add(example_photo("old.jpg", taken_at("1969-12-31T23:59:59")));
    EXPECT_EQ(names(photos.all()),
              (Names{"old.jpg", "early.jpg", "late.jpg", "also late.jpg", "unknown.jpg"}));
}

TEST(PhotoTable, RefusesTheSameBytesAgain) {
    ExampleLibrary example;
    const Photo first = example_photo("one.jpg");
    const PhotoId id = example.library.photos().add(first);
    Photo again = example_photo("another name.jpg");
    again.file.sha256 = first.file.sha256;
    EXPECT_THROW(example.library.photos().add(again), StoreError);
    EXPECT_EQ(names(example.library.photos().all()), Names{"one.jpg"});
    EXPECT_EQ(example.library.photos().with_sha256(first.file.sha256), id);
    EXPECT_EQ(example.library.photos().with_sha256(sha256("other")), std::nullopt);
}

TEST(PhotoTable, AddsAllOfAPhotoOrNothing) {
    ExampleLibrary example;
    Photo photo = example_photo("one.jpg");
    photo.tags.shown = {example.mira, ClientId{77}};
    EXPECT_THROW(example.library.photos().add(photo), StoreError);
    EXPECT_TRUE(example.library.photos().all().empty());
    EXPECT_FALSE(example.library.photos().path_taken(photo.file.path));
}

TEST(PhotoTable, CorrectsTheMomentByTheDevicesClock) {
    ExampleLibrary example;
    example.library.history().apply({"shifted", {}, {{example.phone, std::chrono::minutes{47}}}});
    Photo photo = example_photo("one.jpg", taken_at("2026-11-07T23:30:00.25"));
    photo.file.device = example.phone;
    const PhotoId id = example.library.photos().add(photo);
    EXPECT_EQ(example.library.photos().find(id)->moment, at("2026-11-08T00:17:00.25"));
    EXPECT_EQ(example.library.photos().find(id)->file.taken, photo.file.taken);
}

TEST(PhotoTable, FindsByNameInAnyCaseAndScript) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    photos.add(example_photo("ÎLE Ж.JPG"));
    Photo other = example_photo("île ж.jpg");
    other.file.path = "photos/2027/another.jpg";
    photos.add(other);
    photos.add(example_photo("\xff\xfe.JPG"));
    EXPECT_EQ(photos.named("Île ж.jpg").size(), 2U);
    EXPECT_EQ(names(photos.named("\xff\xfe.jpg")), Names{"\xff\xfe.JPG"})
        << "bytes that are no text stay as they are";
    EXPECT_TRUE(photos.named("île ж").empty()) << "the ending is part of the name";
}

TEST(PhotoTable, FindsByTheStartOfAChecksum) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    Photo one = example_photo("one.jpg");
    one.file.sha256 = "ab" + std::string(62, '0');
    photos.add(one);
    Photo two = example_photo("two.jpg");
    two.file.sha256 = "ab" + std::string(62, 'f');
    photos.add(two);
    Photo three = example_photo("three.jpg");
    three.file.sha256 = "ac" + std::string(62, '0');
    photos.add(three);
    EXPECT_EQ(names(photos.sha256_starting("ab")), (Names{"one.jpg", "two.jpg"}));
    EXPECT_EQ(names(photos.sha256_starting("ABF")), Names{"two.jpg"});
    EXPECT_EQ(names(photos.sha256_starting(three.file.sha256)), Names{"three.jpg"});
    EXPECT_TRUE(photos.sha256_starting("%").empty());
    EXPECT_TRUE(photos.sha256_starting("a_").empty());
}

TEST(PhotoTable, ListsPhotosOfASittingALookAndADevice) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    Photo placed = example_photo("placed.jpg");
    placed.tags.sitting = example.trial;
    photos.add(placed);
    Photo tagged = example_photo("tagged.jpg");
    tagged.tags.look = example.look;
    photos.add(tagged);
    Photo both = example_photo("both.jpg");
    both.tags.sitting = example.trial;
    both.tags.look = example.look;
    both.file.device = example.phone;
    photos.add(both);
    photos.add(example_photo("neither.jpg"));
    const Look look = example.library.looks().find(example.look).value();
    EXPECT_EQ(names(photos.of_sitting(example.trial)), (Names{"placed.jpg", "both.jpg"}));
    EXPECT_EQ(names(photos.around_look(look)), (Names{"placed.jpg", "tagged.jpg", "both.jpg"}));
    EXPECT_EQ(names(photos.of_device(example.phone)), Names{"both.jpg"});
    EXPECT_EQ(names(photos.in_no_sitting()), (Names{"tagged.jpg", "neither.jpg"}));
}

TEST(PhotoTable, KeepsWhoIsShownInOrderForEachPhoto) {
    ExampleLibrary example;
    const ClientId ada = example.library.clients().add(client_called("Ada"));
    Photo two = example_photo("two.jpg");
    two.tags.shown = {ada, example.mira, ada};
    example.library.photos().add(two);
    example.library.photos().add(example_photo("none.jpg"));
    Photo one = example_photo("one.jpg");
    one.tags.shown = {ada};
    example.library.photos().add(one);
    const auto all = example.library.photos().all();
    ASSERT_EQ(names(all), (Names{"two.jpg", "none.jpg", "one.jpg"}));
    EXPECT_EQ(all[0].tags.shown, (std::vector{ada, example.mira})) << "shown twice is shown";
    EXPECT_TRUE(all[1].tags.shown.empty());
    EXPECT_EQ(all[2].tags.shown, std::vector{ada});
}

TEST(PhotoTable, KnowsTakenPathsAsDisksDoThatFoldCase) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    const PhotoId id = photos.add(example_photo("Über.jpg"));
    EXPECT_TRUE(photos.path_taken("photos/2026/ÜBER.JPG"));
    EXPECT_FALSE(photos.path_taken("photos/2026/uber.jpg"));
    photos.set_path(id, "photos/2026/2026-11-07 Mira trial/Über.jpg");
    EXPECT_FALSE(photos.path_taken("photos/2026/Über.jpg"));
    EXPECT_EQ(photos.find(id)->file.path, "photos/2026/2026-11-07 Mira trial/Über.jpg");
    photos.set_path(id, "photos/2026/2026-11-07 Mira trial/über.jpg");
}

TEST(PhotoTable, LetsNoTwoPhotosLieInOnePlace) {
    ExampleLibrary example;
    PhotoTable photos = example.library.photos();
    photos.add(example_photo("one.jpg"));
    const PhotoId two = photos.add(example_photo("two.jpg"));
    EXPECT_THROW(photos.set_path(two, "photos/2026/ONE.jpg"), StoreError);
    Photo three = example_photo("three.jpg");
    three.file.path = "photos/2026/two.jpg";
    EXPECT_THROW(photos.add(three), StoreError);
    EXPECT_EQ(names(photos.all()), (Names{"one.jpg", "two.jpg"}));
}

TEST(PhotoTable, LetsNoPhotoLieOutsideTheLibrary) {
    ExampleLibrary example;
    const PhotoId id = example.library.photos().add(example_photo("one.jpg"));
    for (const char* path : {"", "/etc/one.jpg", "photos/../../one.jpg", ".."}) {
        EXPECT_THROW(example.library.photos().set_path(id, path), StoreError) << path;
        Photo other = example_photo("other.jpg");
        other.file.path = path;
        EXPECT_THROW(example.library.photos().add(other), StoreError) << path;
    }
    EXPECT_EQ(example.library.photos().find(id)->file.path, "photos/2026/one.jpg");
}

TEST(PhotoTable, TakesNewMeasuresAndSuggestions) {
    ExampleLibrary example;
    const Photo full = full_photo(example);
    const PhotoId id = example.library.photos().add(example_photo("one.jpg"));
    example.library.photos().set_measured(id, full.measures, full.fingerprint, *full.head_signs,
                                          full.flaws);
    example.library.photos().set_suggestion(id, full.suggestion);
    const Photo photo = example.library.photos().find(id).value();
    EXPECT_EQ(photo.measures, full.measures);
    EXPECT_EQ(photo.fingerprint, full.fingerprint);
    EXPECT_EQ(photo.head_signs, full.head_signs);
    EXPECT_EQ(photo.flaws, full.flaws);
    EXPECT_EQ(photo.suggestion, full.suggestion);
    EXPECT_EQ(photo.tags, Tags{}) << "a suggestion never counts until she confirms it";
    EXPECT_THROW(example.library.photos().set_suggestion(PhotoId{77}, {}), StoreError);
}

}  // namespace
}  // namespace quarterturn
