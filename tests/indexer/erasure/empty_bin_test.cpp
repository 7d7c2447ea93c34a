#include "indexer/erasure/empty_bin.h"

#include "indexer/erasure/erase.h"
#include "indexer/intake/bin.h"
#include "indexer/intake/sort.h"
#include "indexer/intake/tagging.h"
#include "indexer/store/erasure_table.h"
#include "tests/indexer/erasure/library_to_erase.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

Date day(const char* iso) {
    return parse_date(iso).value();
}

TEST(EmptyBin, IsTakenUpWhereverItWasInterrupted) {
    bool failed = true;
    int tried = 0;
    for (int call = 1; failed; ++call, ++tried) {
        LibraryToErase made;
        put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
        const Path folder = made.folder / "library";
        failed = false;
        FailingDisk disk;
        disk.heal();
        try {
            Library library = Library::open(folder, disk);
            disk.fail_from_call(call);
            failed = !empty_bin(library).left.empty();
        } catch (const DiskError&) {
            failed = true;
        }
        Library library = Library::open(folder);
        finish_erasures(library);
        tidy_folders(library);  // settles a move that was cut short
        const std::size_t left =
            files_with(folder, "hers.jpg") + files_with(folder, sha256("hers.jpg"));
        const bool begun = !library.photos().find_also_in_bin(made.hers);
        EXPECT_EQ(left, begun ? 0U : 2U) << call;
        EXPECT_FALSE(ErasureTable(library.database()).any_unfinished()) << call;
        EXPECT_EQ(files_with(folder, "other.jpg"), 1U) << call;
        EXPECT_TRUE(library.clients().find(made.mira)) << call;
        EXPECT_TRUE(ErasureTable(library.database()).all().empty()) << "nobody was erased";
    }
    EXPECT_GT(tried, 2);
}

TEST(EmptyBin, UndoStopsAtItAndThenSaysHowManyPhotosOfAnActionAreGone) {
    LibraryToErase made;
    const PhotoId other = made.add("another.jpg");
    tag(made.library, std::array{made.hers, other}, {.angle = Angle::crown});
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_EQ(empty_bin(made.library).gone, 1);
    EXPECT_EQ(empty_bin(made.library).gone, 0);
    const auto stop = undo(made.library);
    ASSERT_TRUE(stop);
    EXPECT_EQ(stop->said, "emptied the bin");
    EXPECT_TRUE(stop->stands);
    for (const auto& turned : {undo(made.library), redo(made.library)}) {
        ASSERT_TRUE(turned);
        EXPECT_EQ(turned->said, "tagged 2 photos crown");
        EXPECT_EQ(turned->photos_gone, 1);
    }
    EXPECT_EQ(made.library.photos().find(other)->tags.angle, Angle::crown);
}

// She did nothing then: what she did last is still undone first.
TEST(EmptyBin, UndoStopsNotWhereTheDayLetsPhotosGo) {
    LibraryToErase made;
    const PhotoId other = made.add("another.jpg");
    tag(made.library, std::array{made.hers, other}, {.angle = Angle::crown});
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-12-07")).gone, 1);
    const auto turned = undo(made.library);
    ASSERT_TRUE(turned);
    EXPECT_FALSE(turned->stands);
    EXPECT_EQ(turned->photos_gone, 1);
}

// A month is as long as the calendar says: 30 days from 30 January end in March.
TEST(EmptyBin, LetsGoOnceTheDayThatWasSaidIsPast) {
    LibraryToErase made;
    put_into_bin(made.library, {{made.hers}}, day("2027-01-30"));
    EXPECT_EQ(leaving_bin(made.library), (std::vector{LeavingBin{day("2027-03-01"), 1}}));
    for (const char* too_early : {"2027-02-28", "2027-03-01"}) {
        EXPECT_FALSE(any_to_leave_bin(made.library, day(too_early)));
        EXPECT_EQ(let_go_of_bin(made.library, day(too_early)).gone, 0);
    }
    EXPECT_TRUE(any_to_leave_bin(made.library, day("2027-03-02")));
    EXPECT_EQ(let_go_of_bin(made.library, day("2027-03-02")).gone, 1);
    EXPECT_TRUE(made.library.bin().all().empty());
}

TEST(EmptyBin, AClockThatIsWrongForADayLetsNothingGo) {
    LibraryToErase made;
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-07")).gone, 0);
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_EQ(let_go_of_bin(made.library, day("2099-01-01")).gone, 0) << "years ahead";
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-08")).gone, 0);
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-09")).gone, 0);
    take_out_of_bin(made.library, {{made.hers}});
    EXPECT_EQ(let_go_of_bin(made.library, day("2020-01-01")).gone, 0) << "years behind";
    put_into_bin(made.library, {{made.hers}}, day("2020-01-01"));
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-10")).gone, 0);
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-11")).gone, 0);
    EXPECT_EQ(made.library.bin().all().at(0).since, day("2026-11-09"));
}

TEST(EmptyBin, AClockThatIsAYearAheadForAWeekLetsNothingGo) {
    LibraryToErase made;
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-08")).gone, 0);
    for (const char* wrong : {"2027-11-09", "2027-11-10", "2027-11-11", "2027-11-12", "2027-11-14",
                              "2027-11-16", "2027-11-17"}) {
        EXPECT_EQ(let_go_of_bin(made.library, day(wrong)).gone, 0) << wrong;
    }
    for (const char* right : {"2026-11-18", "2026-11-19", "2026-11-20"}) {
        EXPECT_EQ(let_go_of_bin(made.library, day(right)).gone, 0) << right;
    }
}

TEST(EmptyBin, AfterALongPauseItIsEmptiedAllTheSame) {
    LibraryToErase made;
    EXPECT_EQ(let_go_of_bin(made.library, day("2026-11-07")).gone, 0);
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    int gone = 0;
    for (unsigned of_month = 1; of_month <= 8; ++of_month) {
        EXPECT_EQ(gone, 0) << of_month;
        const Date on{std::chrono::year{2027}, std::chrono::March, std::chrono::day{of_month}};
        gone = let_go_of_bin(made.library, on).gone;
    }
    EXPECT_EQ(gone, 1);
}

TEST(EmptyBin, WhatWasSaidOfOtherPhotosIsUndoneAllTheSame) {
    LibraryToErase made;
    const PhotoId other = made.library.photos().named("other.jpg").front().id;
    TagWishes left;
    left.angle.emplace(Angle::left);
    tag(made.library, {{other}}, left);
    tag(made.library, {{made.hers, other}}, {.note = "kept beside"});
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    empty_bin(made.library);
    EXPECT_EQ(made.library.photos().find(other)->tags.note, "kept beside");
    EXPECT_TRUE(made.library.history().undo()->stands) << "an emptied bin";
    EXPECT_TRUE(made.library.history().undo());
    EXPECT_EQ(made.library.photos().find(other)->tags.note, "");
    EXPECT_TRUE(made.library.history().undo());
    EXPECT_FALSE(made.library.photos().find(other)->tags.angle);
    EXPECT_FALSE(made.library.history().undo()) << "what was said of the other alone is forgotten";
}

TEST(EmptyBin, WhatMayBeOfAPhotoThatWentIsNamedAndStays) {
    LibraryToErase made;
    const Path folder = made.folder / "library";
    Photo namesake = example_photo("hers.jpg");
    namesake.file.path = "photos/2026/Runa/hers.jpg";
    namesake.file.sha256 = sha256("of another");
    made.library.photos().add(namesake);
    const Path changed = folder / "photos/hers (changed) (2).jpg";
    write_bytes(changed, bytes_in("changed"));
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    const BinEmptied emptied = empty_bin(made.library);
    EXPECT_EQ(emptied.gone, 1);
    ASSERT_EQ(emptied.left.size(), 1U);
    EXPECT_TRUE(emptied.left[0].starts_with(changed.string() + ' ')) << emptied.left[0];
    EXPECT_TRUE(std::filesystem::exists(changed));
}

TEST(EmptyBin, ASelectionKeepsItsPhotosWhileTheyLieThere) {
    LibraryToErase made;
    const PhotoId other = made.library.photos().named("other.jpg").front().id;
    made.library.selections().keep({"Spring page", {made.hers, other}});
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_EQ(made.library.selections().find("Spring page")->photos, std::vector{other});
    made.library.selections().keep({"Spring page", {other}});
    take_out_of_bin(made.library, {{made.hers}});
    EXPECT_EQ(made.library.selections().find("Spring page")->photos,
              (std::vector{other, made.hers}));
}

TEST(EmptyBin, WhatIsNotThereIsRefusedAndMovesNothing) {
    LibraryToErase made;
    const PhotoId nowhere{77};
    EXPECT_THROW(put_into_bin(made.library, {{made.hers, nowhere}}, day("2026-11-07")), StoreError);
    EXPECT_TRUE(made.library.photos().find(made.hers));
    EXPECT_THROW(take_out_of_bin(made.library, {{made.hers}}), StoreError);
    put_into_bin(made.library, {{made.hers}}, day("2026-11-07"));
    EXPECT_THROW(take_out_of_bin(made.library, {{made.hers, nowhere}}), StoreError);
    EXPECT_FALSE(made.library.photos().find(made.hers));
}

}  // namespace
}  // namespace quarterturn
