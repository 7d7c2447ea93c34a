#include "indexer/intake/sort.h"

#include "indexer/intake/bin.h"
#include "indexer/intake/tagging.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/failing_disk.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

struct SortTest : ImportTest {
    std::string folder_of(const std::string& name) {
        return Path{photo_named(name).file.path}.parent_path().filename().string();
    }
};

TEST_F(SortTest, MovesPhotosIntoASittingThatWasAddedLater) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    bring_in();
    EXPECT_EQ(folder_of("a.jpg"), "2026-12-01 not yet placed");
    const SittingId added = add_sitting(mira, "2026-12-01T15:00", "2026-12-01T16:00");
    const SortReport report = sort_by_time(library);
    EXPECT_EQ(report.placed, std::vector{photo_named("a.jpg").id});
    EXPECT_TRUE(report.unplaced.empty());
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, added);
    EXPECT_EQ(folder_of("a.jpg"), "2026-12-01 Mira Okonjo-Lindqvist trial");
    EXPECT_FALSE(
        std::filesystem::exists(library.folder() / "photos/2026/2026-12-01 not yet placed"));
    expect_files_match_records(library);
}

TEST_F(SortTest, SaysOfEachUnplacedPhotoWhy) {
    add_sitting(mira, "2026-11-07T11:00", "2026-11-07T13:00");
    write_photo(card / "none.jpg", 1);
    write_photo(card / "alone.jpg", 2, {.taken = "2026:11:09 11:30:00"});
    write_photo(card / "two.jpg", 3, {.taken = "2026:11:07 11:30:00"});
    bring_in();
    std::map<std::string, UnplacedPhoto> unplaced;
    for (const UnplacedPhoto& one : sort_by_time(library).unplaced) {
        unplaced[photo(one.photo).file.name] = one;
    }
    ASSERT_EQ(unplaced.size(), 3U);
    EXPECT_NE(unplaced["none.jpg"].why.find("carries no time"), std::string::npos);
    EXPECT_NE(unplaced["alone.jpg"].why.find("2026-11-09 at 11:30"), std::string::npos);
    EXPECT_EQ(unplaced["two.jpg"].fits.size(), 2U);
}

TEST_F(SortTest, LeavesAloneWhatShePlacedByHand) {
    const SittingId other = add_sitting(mira, "2026-12-01T15:00", "2026-12-01T16:00");
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:10:00"});
    bring_in();
    place_by_hand(library, std::vector{photo_named("a.jpg").id}, other);
    EXPECT_EQ(folder_of("a.jpg"), "2026-12-01 Mira Okonjo-Lindqvist trial");
    EXPECT_TRUE(sort_by_time(library).placed.empty());
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, other);
    leave_to_time(library, std::vector{photo_named("a.jpg").id});
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, trial);
    EXPECT_EQ(folder_of("a.jpg"), "2026-11-07 Mira Okonjo-Lindqvist trial");
    expect_files_match_records(library);
}

// Two photos, an hour's work, two photos, an hour's work, two photos.
struct StageTest : SortTest {
    void take_photos() {
        const std::array times{"10:00:00", "10:01:00", "11:00:00",
                               "11:01:00", "11:55:00", "11:56:00"};
        for (std::size_t i = 0; i < times.size(); ++i) {
            write_photo(card / (std::to_string(i) + ".jpg"), static_cast<int>(i),
                        {.taken = std::string{"2026:11:07 "} + times[i]});
        }
        bring_in();
    }
};

TEST_F(StageTest, SuggestsStagesFromTheGapsAndTagsNone) {
    take_photos();
    EXPECT_EQ(photo_named("0.jpg").suggestion.stage, Stage::before);
    EXPECT_EQ(photo_named("2.jpg").suggestion.stage, Stage::during);
    EXPECT_EQ(photo_named("5.jpg").suggestion.stage, Stage::after);
    EXPECT_EQ(photo_named("5.jpg").tags.stage, std::nullopt);
}

TEST_F(StageTest, ASittingThatWorkedOnTwoLooksHasTwoAfters) {
    Look evening;
    evening.client = mira;
    evening.name = "let down";
    evening.sittings = {trial};
    library.looks().add(evening);
    take_photos();
    EXPECT_EQ(photo_named("0.jpg").suggestion.stage, Stage::before);
    EXPECT_EQ(photo_named("2.jpg").suggestion.stage, Stage::after);
    EXPECT_EQ(photo_named("5.jpg").suggestion.stage, Stage::after);
}

TEST_F(SortTest, AClockShiftPlacesItsPhotosAndOneUndoTakesBothBack) {
    for (int i = 0; i < 4; ++i) {
        const std::string minute = std::to_string(13 + i);
        write_photo(card / ("P" + minute + ".jpg"), i,
                    {.taken = "2026:11:07 09:" + minute + ":00", .make = "Aster", .model = "K2"});
        write_photo(card / ("IMG" + minute + ".jpg"), 10 + i,
                    {.taken = "2026:11:07 10:" + minute + ":00"});
    }
    bring_in();
    EXPECT_EQ(photo_named("P13.jpg").tags.sitting, std::nullopt);
    const std::vector<ClockShift> proposals = propose_clock_shifts(library);
    ASSERT_EQ(proposals.size(), 1U);
    EXPECT_EQ(proposals[0].device, photo_named("P13.jpg").file.device);
    EXPECT_GT(proposals[0].shift, std::chrono::minutes{40});

    const SortReport report = apply_clock_shift(library, proposals[0]);
    EXPECT_EQ(report.placed.size(), 4U);
    EXPECT_EQ(photo_named("P13.jpg").tags.sitting, trial);
    EXPECT_EQ(folder_of("P13.jpg"), "2026-11-07 Mira Okonjo-Lindqvist trial");
    EXPECT_EQ(photo_named("P13.jpg").file.taken->local, at("2026-11-07T09:13:00"));
    EXPECT_TRUE(propose_clock_shifts(library).empty());

    EXPECT_NE(undo(library).value().said.find("Aster K2"), std::string::npos);
    EXPECT_EQ(photo_named("P13.jpg").tags.sitting, std::nullopt);
    EXPECT_EQ(folder_of("P13.jpg"), "2026-11-07 not yet placed");
    EXPECT_EQ(photo_named("P13.jpg").moment, at("2026-11-07T09:13:00"));
    EXPECT_EQ(undo(library), std::nullopt);

    ASSERT_TRUE(redo(library).has_value());
    EXPECT_EQ(photo_named("P13.jpg").tags.sitting, trial);
    expect_files_match_records(library);
}

TEST_F(SortTest, TellsAShiftFromTwoPhotosOfOneMoment) {
    write_photo(card / "camera.jpg", 1,
                {.taken = "2026:11:07 09:13:10", .make = "Aster", .model = "K2"});
    write_photo(card / "phone.jpg", 2, {.taken = "2026:11:07 10:00:10"});
    write_photo(card / "none.jpg", 3);
    bring_in();
    const ClockShift shift =
        clock_shift_from_pair(library, photo_named("camera.jpg").id, photo_named("phone.jpg").id);
    EXPECT_EQ(shift.shift, std::chrono::minutes{47});
    apply_clock_shift(library, shift);
    EXPECT_EQ(photo_named("camera.jpg").moment, photo_named("phone.jpg").moment);
    EXPECT_THROW(
        clock_shift_from_pair(library, photo_named("none.jpg").id, photo_named("phone.jpg").id),
        StoreError);
}

TEST_F(SortTest, UndoingWhatMovesNoPhotoSortsNone) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    bring_in();
    const PhotoId id = photo_named("a.jpg").id;
    Tags noted = photo_named("a.jpg").tags;
    noted.note = "the comb sits low";
    library.history().apply({"noted", {{id, noted}}});
    Client client = library.clients().find(mira).value();
    client.note = "tender left ear";
    library.history().record("changed a client", [&] { library.clients().change(client); });
    // Not sorted yet, so that it shows whether undo does it.
    add_sitting(mira, "2026-12-01T15:00", "2026-12-01T16:00");
    for (const char* said : {"changed a client", "noted"}) {
        EXPECT_EQ(undo(library).value().said, said);
        EXPECT_FALSE(photo_named("a.jpg").tags.sitting) << said;
    }
    for (const char* said : {"noted", "changed a client"}) {
        EXPECT_EQ(redo(library).value().said, said);
        EXPECT_FALSE(photo_named("a.jpg").tags.sitting) << said;
    }
}

TEST_F(SortTest, UndoingWhatMovesSittingsSortsAll) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    bring_in();
    library.history().record("added a sitting",
                             [&] { add_sitting(mira, "2026-12-05T15:00", "2026-12-05T16:00"); });
    const SittingId there = add_sitting(mira, "2026-12-01T15:00", "2026-12-01T16:00");
    EXPECT_FALSE(photo_named("a.jpg").tags.sitting);
    EXPECT_EQ(undo(library).value().said, "added a sitting");
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, there);
}

TEST_F(SortTest, UndoingTheBinSortsItsPhotosAloneAndAsSortingAllWould) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    write_photo(card / "b.jpg", 2, {.taken = "2026:12:01 15:11:00"});
    write_photo(card / "c.jpg", 3, {.taken = "2026:12:02 15:10:00"});
    write_photo(card / "d.jpg", 4, {.taken = "2026:12:01 18:30:00"});
    const SittingId moved = add_sitting(mira, "2026-12-01T15:00", "2026-12-01T19:00");
    bring_in();
    put_into_bin(library, std::vector{photo_named("a.jpg").id}, parse_date("2026-12-03").value());
    Sitting later = library.sittings().find(moved).value();
    later.starts = at("2026-12-02T15:00");
    later.ends = at("2026-12-02T16:00");
    library.sittings().change(later);
    const SittingId since = add_sitting(mira, "2026-12-01T14:00", "2026-12-01T19:00");
    EXPECT_EQ(undo(library), "put a.jpg into the bin");
    EXPECT_EQ(photo_named("a.jpg").tags.sitting, since);
    EXPECT_EQ(photo_named("c.jpg").tags.sitting, std::nullopt) << "it was not asked for";
    sort_by_time(library);
    const RecordsDump sorted = dump_of(library.database());
    for (int turns = 0; turns < 2; ++turns) {
        redo(library);
        const RecordsDump without = dump_of(library.database());
        sort_by_time(library);
        EXPECT_EQ(difference(dump_of(library.database()), without), "");
        undo(library);
        EXPECT_EQ(difference(dump_of(library.database()), sorted), "");
    }
    expect_files_match_records(library);
}

TEST_F(SortTest, KeepsPhotosOfOneNameApartInTheNewFolder) {
    write_photo(card / "1" / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    write_photo(card / "2" / "a.jpg", 2, {.taken = "2026:12:02 15:10:00"});
    bring_in();
    const SittingId both = add_sitting(mira, "2026-12-01T15:00", "2026-12-03T16:00");
    sort_by_time(library);
    EXPECT_EQ(library.photos().of_sitting(both).size(), 2U);
    expect_files_match_records(library);
}

TEST_F(SortTest, AFileThatIsGoneDoesNotHoldUpTheOthers) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    write_photo(card / "b.jpg", 2, {.taken = "2026:12:01 15:11:00"});
    bring_in();
    std::filesystem::remove(library.photo_file(photo_named("a.jpg")));
    add_sitting(mira, "2026-12-01T15:00", "2026-12-01T16:00");
    sort_by_time(library);
    EXPECT_EQ(folder_of("b.jpg"), "2026-12-01 Mira Okonjo-Lindqvist trial");
}

TEST(SortFaults, AFailureAtAnyCallLosesNothingAndTheNextRunGoesOn) {
    TemporaryFolder folder;
    write_photo(folder / "card" / "a.jpg", 1, {.taken = "2026:12:01 15:10:00"});
    write_photo(folder / "card" / "b.jpg", 2, {.taken = "2026:12:01 15:11:00"});
    FailingDisk disk;
    Library library = Library::create(folder / "library", disk);
    import_photos(library, *make_confined_decoder(), {.sources = {folder / "card"}});
    Sitting sitting;
    sitting.client = library.clients().add(client_called("Noor Achterberg"));
    sitting.starts = at("2026-12-01T15:00");
    sitting.ends = at("2026-12-01T16:00");
    sitting.id = library.sittings().add(sitting);

    bool failed = true;
    for (int call = 1; failed; ++call) {
        SCOPED_TRACE("call " + std::to_string(call));
        disk.fail_call(call, ENOSPC);
        try {
            sort_by_time(library);
        } catch (const DiskError&) {
        }
        failed = disk.failed();
        disk.heal();
        for (const Photo& photo : library.photos().all()) {
            EXPECT_EQ(sha256(read_bytes(library.photo_file(photo))), photo.file.sha256);
        }
        sort_by_time(library);
        expect_files_match_records(library);
        // Back and forth, so that there is something to move each time.
        sitting.starts = call % 2 == 1 ? at("2026-12-02T15:00") : at("2026-12-01T15:00");
        sitting.ends = sitting.starts + std::chrono::hours{1};
        library.sittings().change(sitting);
    }
}

}  // namespace
}  // namespace quarterturn
