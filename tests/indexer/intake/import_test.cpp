// What she sees after bringing photos in.

#include "indexer/intake/import.h"

#include "indexer/intake/tagging.h"
#include "indexer/intake/thumbnails.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/files.h"
#include "tests/support/test_pictures.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

std::vector<std::string> names(const std::vector<Path>& files) {
    std::vector<std::string> names;
    for (const Path& file : files) names.push_back(file.filename().string());
    return names;
}

TEST_F(ImportTest, PutsAPhotoIntoTheFolderOfTheSittingItWasTakenIn) {
    write_photo(card / "DCIM" / "IMG_0001.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    const ImportReport report = bring_in();
    ASSERT_EQ(report.imported.size(), 1U);
    const Photo taken_in = photo(report.imported[0]);
    EXPECT_EQ(taken_in.file.path,
              "photos/2026/2026-11-07 Mira Okonjo-Lindqvist trial/IMG_0001.jpg");
    EXPECT_EQ(taken_in.tags.sitting, trial);
    EXPECT_FALSE(taken_in.tags.placed_by_hand);
    EXPECT_EQ(taken_in.moment, at("2026-11-07T10:12:03"));
    EXPECT_EQ(library.devices().find(taken_in.file.device.value())->model, "P3");
    EXPECT_EQ(read_bytes(library.photo_file(taken_in)), read_bytes(card / "DCIM" / "IMG_0001.jpg"));
    expect_files_match_records(library);
}

TEST_F(ImportTest, KeepsAPhotoOfNoSittingByItsDateAndOneWithoutATimeApart) {
    write_photo(card / "out.jpg", 1, {.taken = "2026:11:08 18:00:00"});
    write_photo(card / "when.jpg", 2);
    bring_in();
    EXPECT_EQ(photo_named("out.jpg").file.path, "photos/2026/2026-11-08 not yet placed/out.jpg");
    EXPECT_EQ(photo_named("when.jpg").file.path, "photos/undated/when.jpg");
    EXPECT_EQ(photo_named("when.jpg").file.taken, std::nullopt);
}

TEST_F(ImportTest, LeavesAPhotoThatFitsTwoSittingsForHerToPlace) {
    add_sitting(mira, "2026-11-07T11:00", "2026-11-07T13:00", SittingKind::model_shoot);
    write_photo(card / "both.jpg", 1, {.taken = "2026:11:07 11:30:00"});
    bring_in();
    EXPECT_EQ(photo_named("both.jpg").tags.sitting, std::nullopt);
    EXPECT_EQ(photo_named("both.jpg").file.path, "photos/2026/2026-11-07 not yet placed/both.jpg");
}

TEST_F(ImportTest, ReportsPhotosInTheOrderOfTheirMoments) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:30:00"});
    write_photo(card / "b.jpg", 2);
    write_photo(card / "c.jpg", 3, {.taken = "2026:11:07 10:10:00"});
    const ImportReport report = bring_in();
    ASSERT_EQ(report.imported.size(), 3U);
    EXPECT_EQ(photo(report.imported[0]).file.name, "c.jpg");
    EXPECT_EQ(photo(report.imported[1]).file.name, "a.jpg");
    EXPECT_EQ(photo(report.imported[2]).file.name, "b.jpg");
}

TEST_F(ImportTest, StoresTheSameBytesOnceUnderWhateverName) {
    write_photo(card / "first.jpg", 1);
    std::filesystem::copy_file(card / "first.jpg", card / "second.jpg");
    const ImportReport once = bring_in();
    EXPECT_EQ(once.imported.size(), 1U);
    EXPECT_EQ(names(once.already_here), std::vector<std::string>{"second.jpg"});

    std::filesystem::copy_file(card / "first.jpg", folder / "elsewhere.jpg");
    const ImportReport again = bring_in({folder / "elsewhere.jpg"});
    EXPECT_TRUE(again.imported.empty());
    EXPECT_EQ(again.already_here.size(), 1U);
    EXPECT_EQ(library.photos().all().size(), 1U);
    expect_files_match_records(library);
}

TEST_F(ImportTest, KeepsTwoPhotosOfOneNameApart) {
    for (const char* part : {"100A", "101A", "102A"}) {
        write_photo(card / part / "IMG_0001.jpg", part[2], {.taken = "2026:11:07 10:12:03"});
    }
    write_photo(card / "103A" / "img_0001.JPG", 9, {.taken = "2026:11:07 10:12:04"});
    EXPECT_EQ(bring_in().imported.size(), 4U);
    std::set<std::string> stored;
    for (const Photo& kept : library.photos().all()) {
        stored.insert(Path{kept.file.path}.filename().string());
    }
    EXPECT_EQ(stored, (std::set<std::string>{"IMG_0001.jpg", "IMG_0001 (2).jpg", "IMG_0001 (3).jpg",
                                             "img_0001 (4).JPG"}));
    expect_files_match_records(library);
}

TEST_F(ImportTest, NeverTouchesTheOriginals) {
    write_photo(card / "a.jpg", 1);
    write_file(card / "broken.jpg", "\xFF\xD8\xFFnothing more");
    write_file(card / "clip.mov", "not much of a film");
    const auto before = all_files(card);
    bring_in();
    bring_in();
    EXPECT_EQ(all_files(card), before);
}

TEST_F(ImportTest, CountsAndNamesWhatIsNoPhoto) {
    write_photo(card / "a.jpg", 1);
    write_file(card / "clip.mp4", std::string{"\0\0\0\x18"
                                              "ftypmp42\0\0\0\0mp42isom",
                                              24});
    write_file(card / "IMG_0001.AAE", "<plist/>");
    write_file(card / "IMG_0001.xmp", "<x:xmpmeta/>");
    write_file(card / "notes.txt", "ask about the veil");
    write_file(card / ".hidden.jpg", "half a photo");
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_TRUE(report.refused.empty());
    EXPECT_EQ(names(report.left_alone),
              (std::vector<std::string>{".hidden.jpg", "IMG_0001.AAE", "IMG_0001.xmp", "clip.mp4",
                                        "notes.txt"}));
}

TEST_F(ImportTest, TellsAPhotoByItsContentAndNotByItsName) {
    write_photo(card / "photo.jpg", 1);
    std::filesystem::rename(card / "photo.jpg", card / "photo.dat");
    write_photo(card / "picture.png", 2);
    std::filesystem::rename(card / "picture.png", card / "picture.jpg");
    EXPECT_EQ(bring_in().imported.size(), 2U);
}

TEST_F(ImportTest, RefusesADamagedPhotoWithASentenceAndTakesItsNeighbours) {
    write_photo(card / "a.jpg", 1);
    write_file(card / "b.jpg", "");
    write_file(card / "c.jpg", "no photo at all");
    write_file(card / "d.png", "\x89PNG\r\n\x1A\nand then nothing");
    write_photo(card / "e.jpg", 2);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 2U);
    ASSERT_EQ(report.refused.size(), 3U);
    for (const RefusedFile& refused : report.refused) {
        EXPECT_NE(refused.reason.find("keep the card"), std::string::npos) << refused.reason;
        EXPECT_TRUE(refused.reason.ends_with('.')) << refused.reason;
    }
    EXPECT_EQ(library.photos().all().size(), 2U);
    expect_files_match_records(library);
}

TEST_F(ImportTest, StoresARawFileAsItIsAndShowsThePreviewInside) {
    std::filesystem::create_directories(card);
    const Bytes raw = tiny_raw(encoded(picture(1, {640, 480}), ".jpg"));
    write_bytes(card / "DSC_0001.DNG", raw);
    ASSERT_EQ(bring_in().imported.size(), 1U);
    const Photo taken_in = photo_named("DSC_0001.DNG");
    EXPECT_EQ(read_bytes(library.photo_file(taken_in)), raw);
    EXPECT_EQ(taken_in.file.width, 640);
    const cv::Mat small = cv::imread(thumbnail_file(library, taken_in.file.sha256).string());
    EXPECT_EQ(small.size(), (cv::Size{512, 384}));
}

TEST_F(ImportTest, RecordsTheSizeAsSeenUpright) {
    write_photo(card / "turned.jpg", 1, {.orientation = 6, .size = {128, 96}});
    bring_in();
    const Photo turned = photo_named("turned.jpg");
    EXPECT_EQ(turned.file.width, 96);
    EXPECT_EQ(turned.file.height, 128);
    EXPECT_EQ(turned.file.orientation, 6);
}

TEST_F(ImportTest, SuggestsAnAngleFromAKeywordAndTagsNothing) {
    write_photo(card / "a.jpg", 1, {.keyword = "left"});
    bring_in();
    EXPECT_EQ(photo_named("a.jpg").suggestion.angle, Angle::left);
    EXPECT_EQ(photo_named("a.jpg").tags.angle, std::nullopt);
}

TEST_F(ImportTest, TakesADevicesClockShiftIntoAccount) {
    const DeviceId camera =
        library.devices().find_or_add({.id = {}, .make = "Aster", .model = "K2", .serial = {}});
    library.history().apply(
        {.said = "shift", .tags = {}, .shifts = {{camera, std::chrono::hours{1}}}});
    write_photo(card / "a.jpg", 1,
                {.taken = "2026:11:07 09:30:00", .make = "Aster", .model = "K2"});
    bring_in();
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, trial);
    EXPECT_EQ(photo_named("a.jpg").file.taken->local, at("2026-11-07T09:30:00"));
    EXPECT_EQ(photo_named("a.jpg").moment, at("2026-11-07T10:30:00"));
}

TEST_F(ImportTest, KeepsASmallUprightPicture) {
    write_photo(card / "large.jpg", 1, {.orientation = 6, .size = {1600, 1200}});
    bring_in();
    const cv::Mat small =
        cv::imread(thumbnail_file(library, photo_named("large.jpg").file.sha256).string());
    EXPECT_EQ(small.size(), (cv::Size{384, 512}));
}

TEST_F(ImportTest, RefusesTheLibrarysOwnFolder) {
    const ImportReport report = bring_in({library.folder() / "photos"});
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_NE(report.refused[0].reason.find("this library itself"), std::string::npos);
}

TEST_F(ImportTest, PassesOverTheLibraryInsideASource) {
    write_photo(folder / "card" / "a.jpg", 1);
    bring_in();
    const ImportReport report = bring_in({folder.path()});
    EXPECT_EQ(report.already_here.size(), 1U);
    EXPECT_EQ(names(report.left_alone), std::vector<std::string>{"library"});
}

TEST_F(ImportTest, RefusesASourceThatIsNotThere) {
    const ImportReport report = bring_in({folder / "no such card"});
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_NE(report.refused[0].reason.find("no such card"), std::string::npos);
}

TEST_F(ImportTest, FollowsNoLinksAndOpensNoPipes) {
    write_photo(card / "a.jpg", 1);
    write_photo(folder / "private" / "b.jpg", 2);
    std::filesystem::create_directory_symlink(card, card / "round");
    std::filesystem::create_directory_symlink(folder / "private", card / "out");
    std::filesystem::create_symlink(folder / "private" / "b.jpg", card / "b.jpg");
    ASSERT_EQ(::mkfifo((card / "pipe.jpg").c_str(), 0600), 0);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_EQ(names(report.left_alone), (std::vector<std::string>{"out", "round"}));
    EXPECT_EQ(report.refused.size(), 2U) << "b.jpg and pipe.jpg, which are named like photos";
}

TEST_F(ImportTest, MeetsAFileOnceThoughTwoSourcesHoldIt) {
    write_photo(card / "DCIM" / "a.jpg", 1);
    const ImportReport report = bring_in({card, card / "DCIM", card / "DCIM" / "a.jpg"});
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_TRUE(report.already_here.empty());
}

TEST_F(ImportTest, CleansAClientsNameForTheFolder) {
    const ClientId client = library.clients().add(client_called("Zoë / \"Zo\" <Adeyemi>:."));
    add_sitting(client, "2027-01-02T09:00", "2027-01-02T10:00", SittingKind::wedding_day);
    write_photo(card / "a.jpg", 1, {.taken = "2027:01:02 09:30:00"});
    bring_in();
    EXPECT_EQ(photo_named("a.jpg").file.path,
              "photos/2027/2027-01-02 Zoë Zo Adeyemi wedding day/a.jpg");
}

TEST_F(ImportTest, TellsProgressToTheLastFile) {
    for (int i = 0; i < 5; ++i) write_photo(card / (std::to_string(i) + ".jpg"), i);
    bring_in({card / "0.jpg"});
    std::vector<std::int64_t> done;
    ImportWishes wishes{.sources = {card}};
    wishes.progress = [&](const ImportProgress& progress) {
        EXPECT_EQ(progress.total, 5);
        done.push_back(progress.done);
    };
    import_photos(library, *decoder, wishes);
    EXPECT_EQ(done, (std::vector<std::int64_t>{2, 3, 4, 5}));
}

TEST_F(ImportTest, KeepsWhatIsDoneWhenSheStopsItAndGoesOnNextTime) {
    for (int i = 0; i < 60; ++i) write_photo(card / (std::to_string(i) + ".jpg"), i);
    std::stop_source source;
    ImportWishes wishes{.sources = {card}, .stop = source.get_token()};
    wishes.progress = [&](const ImportProgress& progress) {
        if (progress.done == 3) source.request_stop();
    };
    const ImportReport stopped = import_photos(library, *decoder, wishes);
    EXPECT_TRUE(stopped.stopped);
    EXPECT_GE(stopped.imported.size(), 3U);
    EXPECT_LT(stopped.imported.size(), 60U);
    EXPECT_EQ(library.photos().all().size(), stopped.imported.size());
    expect_files_match_records(library);

    const ImportReport rest = bring_in();
    EXPECT_FALSE(rest.stopped);
    EXPECT_EQ(rest.already_here.size(), stopped.imported.size());
    EXPECT_EQ(library.photos().all().size(), 60U);
}

TEST_F(ImportTest, TakesAPhotoInAgainAfterItsBytesChanged) {
    write_photo(card / "a.jpg", 1);
    bring_in();
    write_photo(card / "a.jpg", 2);
    EXPECT_EQ(bring_in().imported.size(), 1U);
    EXPECT_EQ(library.photos().all().size(), 2U);
}

TEST_F(ImportTest, KeepsBytesThatAreNoTextOutOfTheRecords) {
    write_photo(card / "a.jpg", 1);
    std::filesystem::rename(card / "a.jpg", card / "a\xFF\xFE.jpg");
    const ImportReport report = bring_in();
    ASSERT_EQ(report.imported.size(), 1U);
    EXPECT_EQ(photo(report.imported[0]).file.name, "a__.jpg");
}

}  // namespace
}  // namespace quarterturn
