// Erasure whichever call to the disk fails, and taken up again after it.

#include "indexer/erasure/erase.h"

#include "indexer/store/erasure_table.h"
#include "tests/indexer/erasure/library_to_erase.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

TEST(Erase, IsTakenUpWhereverItWasInterrupted) {
    bool failed = true;
    int tried = 0;
    for (int call = 1; failed; ++call, ++tried) {
        LibraryToErase made;
        const Path folder = made.folder / "library";
        failed = false;
        FailingDisk disk;
        disk.heal();
        try {
            Library library = Library::open(folder, disk);
            const ErasurePlan plan = plan_erasure(library, made.mira, SharedPhotos::stay);
            disk.fail_from_call(call);
            erase(library, plan, parse_date("2026-11-07").value());
        } catch (const DiskError&) {
            failed = true;
        }
        Library library = Library::open(folder);
        finish_erasures(library);
        const auto erasures = ErasureTable(library.database()).all();
        if (erasures.empty()) {  // not begun
            EXPECT_TRUE(library.clients().find(made.mira)) << call;
            EXPECT_EQ(files_with(folder, "hers.jpg"), 1U) << call;
            continue;
        }
        EXPECT_FALSE(library.clients().find(made.mira)) << call;
        EXPECT_FALSE(library.photos().find(made.hers)) << call;
        EXPECT_EQ(files_with(folder, "hers.jpg") + files_with(folder, sha256("hers.jpg")), 0U)
            << call;
        EXPECT_EQ(files_with(folder, "other.jpg"), 1U) << call;
        ASSERT_EQ(erasures.size(), 1U) << call;
        EXPECT_TRUE(erasures[0].finished) << call;
    }
    EXPECT_GT(tried, 4);
}

TEST(Erase, SaysWhichWeddingsKeepAPartOfHerName) {
    LibraryToErase made;
    // A wedding of hers alone goes with her.
    Wedding day = made.library.weddings().find(made.wedding).value();
    day.party.push_back({made.library.clients().add(client_called("Ada Vale")), "bridesmaid"});
    made.library.weddings().change(day);
    const Erased erased =
        erase(made.library, plan_erasure(made.library, made.mira, SharedPhotos::stay),
              parse_date("2026-11-07").value());
    ASSERT_EQ(erased.alike.size(), 1U);
    EXPECT_NE(erased.alike[0].find(day.name), std::string::npos) << erased.alike[0];
}

TEST(Erase, TakesWhatWasFoundChangedOfHerPhotosAlong) {
    LibraryToErase made;
    const Path hers = made.library.photo_file(made.library.photos().find(made.hers).value());
    const Path folder = hers.parent_path();
    write_bytes(folder / "hers (changed).jpg", bytes_in("changed"));
    write_bytes(folder / "hers (changed) (3).jpg", bytes_in("changed again"));
    made.add("hers (changed) (2).jpg");  // brought in since
    write_bytes(folder / "other (changed).jpg", bytes_in("of another"));
    erase(made.library, plan_erasure(made.library, made.mira, SharedPhotos::stay),
          parse_date("2026-11-07").value());
    EXPECT_EQ(files_with(made.library.folder(), "hers"), 1U);
    EXPECT_EQ(files_with(made.library.folder(), "hers (changed) (2)"), 1U);
    EXPECT_EQ(files_with(made.library.folder(), "other (changed)"), 1U);
}

}  // namespace
}  // namespace quarterturn
