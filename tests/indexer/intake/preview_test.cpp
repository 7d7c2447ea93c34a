// What she is told before anything is copied.

#include "indexer/intake/preview.h"

#include "indexer/intake/sort.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

struct PreviewTest : ImportTest {
    ImportPreview preview() { return preview_import(library, {.sources = {card}}); }
};

TEST_F(PreviewTest, TellsHowManyFromWhenToWhenAndByWhichDevices) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    write_photo(card / "b.jpg", 2, {.taken = "2026:11:07 11:40:00"});
    write_photo(card / "c.jpg", 3, {.taken = "2026:11:09 18:00:00", .model = "P4"});
    const ImportPreview told = preview();
    EXPECT_EQ(told.fresh, 3);
    EXPECT_EQ(told.first, at("2026-11-07T10:12:03"));
    EXPECT_EQ(told.last, at("2026-11-09T18:00:00"));
    ASSERT_EQ(told.devices.size(), 2U);
    EXPECT_EQ(told.devices[0].device.model, "P3");
    EXPECT_EQ(told.devices[0].photos, 2);
    EXPECT_EQ(told.devices[1].device.model, "P4");
    std::int64_t bytes = 0;
    for (const auto& [file, content] : all_files(card)) bytes += std::ssize(content);
    EXPECT_EQ(told.bytes, bytes);
}

TEST_F(PreviewTest, TellsWhichSittingsTheySeemToBelongTo) {
    add_sitting(mira, "2026-11-07T11:30", "2026-11-07T13:00", SittingKind::model_shoot);
    write_photo(card / "trial.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    write_photo(card / "both.jpg", 2, {.taken = "2026:11:07 11:40:00"});
    write_photo(card / "none.jpg", 3, {.taken = "2026:11:09 18:00:00"});
    write_photo(card / "when.jpg", 4);
    const ImportPreview told = preview();
    ASSERT_EQ(told.sittings.size(), 1U);
    EXPECT_EQ(told.sittings[0].sitting.id, trial);
    EXPECT_EQ(told.sittings[0].photos, 1);
    EXPECT_EQ(told.in_several, 1);
    EXPECT_EQ(told.in_no_sitting, 1);
    EXPECT_EQ(told.undated, 1);
}

TEST_F(PreviewTest, CountsByTheClockSheSetForADevice) {
    apply_clock_shift(library, {phone, std::chrono::minutes{47}, "", 0, 0, 0});
    write_photo(card / "slow.jpg", 1, {.taken = "2026:11:07 09:20:00"});
    const ImportPreview told = preview();
    EXPECT_EQ(told.first, at("2026-11-07T10:07:00"));
    ASSERT_EQ(told.sittings.size(), 1U);
    EXPECT_EQ(told.sittings[0].sitting.id, trial);
}

TEST_F(PreviewTest, KnowsWhatIsHereUnderAnyNameAndWhatIsThereTwice) {
    write_photo(card / "a.jpg", 1);
    bring_in();
    std::filesystem::rename(card / "a.jpg", card / "renamed.jpg");
    write_photo(card / "new.jpg", 2);
    std::filesystem::copy_file(card / "new.jpg", card / "new again.jpg");
    const ImportPreview told = preview();
    EXPECT_EQ(told.fresh, 1);
    EXPECT_EQ(told.already_here.size(), 2U);
}

TEST_F(PreviewTest, TellsFilesApartThatDifferInTheirLastByteAlone) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    Bytes bytes = read_bytes(card / "a.jpg");
    bytes.resize(bytes.size() + 200'000);
    write_bytes(card / "a.jpg", bytes);
    bring_in();
    std::filesystem::rename(card / "a.jpg", card / "same.jpg");
    bytes.back() = std::byte{1};
    write_bytes(card / "other.jpg", bytes);
    bytes.back() = std::byte{2};
    write_bytes(card / "third.jpg", bytes);
    write_bytes(card / "third again.jpg", bytes);
    const ImportPreview told = preview();
    EXPECT_EQ(told.fresh, 2);
    EXPECT_EQ(told.already_here.size(), 2U);
    const ImportReport came = bring_in();
    EXPECT_EQ(came.imported.size(), 2U);
    EXPECT_EQ(came.already_here.size(), 2U);
}

TEST_F(PreviewTest, KnowsWhatIsHereThoughTheFileInTheLibraryCannotBeRead) {
    write_photo(card / "a.jpg", 1);
    bring_in();
    std::filesystem::remove(library.photo_file(library.photos().all().at(0)));
    std::filesystem::rename(card / "a.jpg", card / "renamed.jpg");
    EXPECT_EQ(preview().already_here.size(), 1U);
}

TEST_F(PreviewTest, LeavesOtherFilesAloneAndRefusesWhatHoldsNoPhoto) {
    write_file(card / "notes.txt", "buy pins");
    write_file(card / "empty.jpg", "");
    write_file(card / "text.jpg", "no picture at all");
    const ImportPreview told = preview();
    EXPECT_EQ(told.fresh, 0);
    EXPECT_EQ(told.left_alone, std::vector<Path>{card / "notes.txt"});
    EXPECT_EQ(told.refused.size(), 2U);
}

TEST_F(PreviewTest, WritesNothing) {
    write_photo(card / "a.jpg", 1);
    const auto card_before = all_files(card);
    const auto photos_before = all_files(library.folder() / "photos");
    preview();
    EXPECT_EQ(all_files(card), card_before);
    EXPECT_EQ(all_files(library.folder() / "photos"), photos_before);
    EXPECT_TRUE(library.photos().all().empty());
    EXPECT_EQ(library.devices().all().size(), 1U);
}

// The import itself is the oracle: whatever lies on the card, it does as was told.
TEST_F(PreviewTest, ComesTrue) {
    for (int i = 0; i < 6; ++i) {
        const std::string name = std::to_string(i) + (i % 2 ? ".jpg" : ".png");
        write_photo(card / name, i, {.taken = i % 3 ? "2026:11:07 10:12:03" : ""});
    }
    std::filesystem::copy_file(card / "1.jpg", card / "twin.jpg");
    write_file(card / "clip.txt", "none");
    const ImportPreview told = preview();
    const ImportReport came = bring_in();
    EXPECT_EQ(told.fresh, std::ssize(came.imported));
    EXPECT_EQ(told.already_here.size(), came.already_here.size());
    EXPECT_EQ(told.left_alone, came.left_alone);
    EXPECT_EQ(told.refused, came.refused);
    const auto placed = count_by_sitting(library, came.imported);
    ASSERT_EQ(placed.size(), told.sittings.size());
    EXPECT_EQ(placed[0].photos, told.sittings[0].photos);
}

TEST_F(PreviewTest, CanBeStopped) {
    write_photo(card / "a.jpg", 1);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_TRUE(preview_import(library, {.sources = {card}, .stop = stop.get_token()}).stopped);
}

}  // namespace
}  // namespace quarterturn
