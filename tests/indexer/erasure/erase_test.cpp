// Erasure whichever call to the disk fails, and taken up again after it.

#include "indexer/erasure/erase.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>

#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/intake/bin.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/listed_past_lock.h"
#include "tests/indexer/erasure/library_to_erase.h"
#include "tests/support/command.h"
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
            failed = !erase(library, plan, parse_date("2026-11-07").value()).erasure.finished;
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

TEST(Erase, NamesTheWeddingThatGoesWithHerAndNoneThatSomebodyElseIsIn) {
    LibraryToErase made;
    Wedding day = made.library.weddings().find(made.wedding).value();
    const auto plan = [&] { return plan_erasure(made.library, made.mira, SharedPhotos::stay); };
    EXPECT_EQ(plan().weddings, std::vector{day});
    const std::string words = erasure_words(made.library, plan()).front();
    EXPECT_NE(words.find("and the wedding Okonjo-Lindqvist and Vale on 2026-11-21, which nobody "
                         "else is in."),
              std::string::npos)
        << words;
    Look of_another;
    of_another.client = made.library.clients().add(client_called("Ada Vale"));
    of_another.wedding = made.wedding;
    of_another.name = "plait";
    made.library.looks().add(of_another);
    EXPECT_TRUE(plan().weddings.empty());
    erase(made.library, plan(), parse_date("2026-11-07").value());
    EXPECT_TRUE(made.library.weddings().find(made.wedding));
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

TEST(Erase, ForgetsAnInterruptedImportThatSaysTheNameAndNoOther) {
    LibraryToErase made;
    for (const char* path : {"/media/Trial of Mira Okonjo-Lindqvist", "/media/MIRAOKONJOLINDQVIST7"}) {
        BegunIntake::once(made.library).keep({path});
        forget_intake_saying(made.library, "Mira Okonjo-Lindqvist");
        EXPECT_TRUE(BegunIntake::once(made.library).sources().empty()) << path;
    }
    BegunIntake::once(made.library).keep({"/media/Trial of Mira Okonjo-Lindqvist"});
    const Path on_its_way = made.library.incoming_folder() / (sha256("not recorded") + ".part");
    write_bytes(on_its_way, bytes_in("not recorded"));
    BegunIntake::as_they_arrive(made.library).keep({"/home/anna/Incoming"});
    erase(made.library, plan_erasure(made.library, made.mira, SharedPhotos::stay),
          parse_date("2026-11-07").value());
    EXPECT_TRUE(BegunIntake::once(made.library).sources().empty());
    EXPECT_EQ(BegunIntake::as_they_arrive(made.library).sources(),
              std::vector<Path>{"/home/anna/Incoming"});
    EXPECT_FALSE(std::filesystem::exists(on_its_way)) << "a photo of an import that was killed";
}

// Who may not remove one photo.
class KeepsOne : public FailingDisk {
  public:
    void remove(const Path& file) override {
        if (keeps && file.filename() == "hers.jpg") {
            throw DiskError(file.string() + " may not be removed.", file, EACCES);
        }
        FailingDisk::remove(file);
    }
    bool keeps = true;
};

struct KeptFromRemoving : testing::Test, LibraryToErase {
    KeptFromRemoving() {
        disk.heal();
        const PhotoId second = add("second.jpg");
        Tags tags;
        tags.look = look;
        library.history().apply({"tagged", {{second, tags}}, {}});
        write_bytes(library.folder() / "notes.txt", bytes_in("call Mira Okonjo-Lindqvist"));
    }
    Erased erase_her() {
        Library kept = Library::open(folder / "library", disk);
        return erase(kept, plan_erasure(kept, mira, SharedPhotos::stay),
                     parse_date("2026-11-07").value());
    }
    static bool says(const std::vector<std::string>& sentences, const std::string& part) {
        return std::ranges::any_of(sentences, [&](const std::string& sentence) {
            return sentence.find(part) != std::string::npos;
        });
    }

    KeepsOne disk;
};

TEST_F(KeptFromRemoving, TheOthersGoAndItIsSaidThatItGoesOn) {
    const Erased erased = erase_her();
    EXPECT_FALSE(erased.erasure.finished);
    EXPECT_EQ(files_with(library.folder(), "second.jpg"), 0U);
    EXPECT_EQ(files_with(library.folder(), "hers.jpg"), 1U);
    EXPECT_TRUE(says(erased.left, "hers.jpg may not be removed"));
    EXPECT_TRUE(says(erased.left, "the erasure is not finished"));
    EXPECT_FALSE(says(erased.left, "notes.txt")) << "said when it is finished";
}

TEST_F(KeptFromRemoving, WhatElseToLookForIsSaidWhenItIsFinished) {
    erase_her();
    Library later = Library::open(folder / "library", disk);
    EXPECT_TRUE(says(finish_erasures(later), "hers.jpg may not be removed"));
    disk.keeps = false;
    const std::vector<std::string> words = finish_erasures(later);
    EXPECT_TRUE(says(words, "is finished now"));
    EXPECT_TRUE(says(words, "notes.txt still says it"));
    EXPECT_TRUE(says(words, erasure_caution));
    note_told_of_erasures(later);
    EXPECT_TRUE(finish_erasures(later).empty());
    EXPECT_EQ(output_of("grep -rlaF Okonjo " + shell_word(folder / "library") + " || true"),
              (folder / "library/notes.txt").string() + '\n');
}

TEST_F(KeptFromRemoving, ItIsSaidThoughAnotherProgramReadTheRecordsMeanwhile) {
    disk.keeps = false;
    {
        const SQLite::Database read_by((library.folder() / "records.sqlite").string());
        SQLite::Statement reading(read_by, "SELECT id FROM photo");
        ASSERT_TRUE(reading.executeStep());
        const Erased erased = erase_her();
        EXPECT_FALSE(erased.erasure.finished);
        EXPECT_TRUE(says(erased.left, "Another program has the library open"));
    }
    EXPECT_TRUE(says(finish_erasures(library), "notes.txt still says it"));
    EXPECT_EQ(output_of("grep -rlaF Okonjo " + shell_word(folder / "library")),
              (folder / "library/notes.txt").string() + '\n');
}

// Killed before it was printed, or looked at in a window that she leaves.
TEST_F(KeptFromRemoving, WhatIsLeftIsSaidAgainUntilItWasTold) {
    disk.keeps = false;
    EXPECT_TRUE(says(erase_her().left, "notes.txt still says it"));
    EXPECT_TRUE(says(finish_erasures(library), "notes.txt still says it"));
    note_told_of_erasures(library);
    EXPECT_TRUE(finish_erasures(library).empty());
    ASSERT_EQ(left_by_erasures(library).size(), 1U) << "and can be asked for";
    std::filesystem::remove(library.folder() / "notes.txt");
    EXPECT_TRUE(left_by_erasures(library).empty());
}

TEST_F(KeptFromRemoving, EmptyingTheBinGoesOnWithItAndSaysWhatIsLeft) {
    erase_her();
    disk.keeps = false;
    put_into_bin(library, {{not_hers}}, parse_date("2026-11-07").value());
    const std::vector<std::string> left = empty_bin(library).left;
    EXPECT_TRUE(says(left, "is finished now"));
    EXPECT_TRUE(says(left, "notes.txt still says it"));
}

TEST_F(KeptFromRemoving, BroughtInAgainMeanwhileItStays) {
    erase_her();
    const PhotoId again = add("hers.jpg");
    disk.keeps = false;
    EXPECT_TRUE(says(finish_erasures(library), "is finished now"));
    EXPECT_EQ(files_with(library.folder(), "hers.jpg"), 1U);
    EXPECT_EQ(library.photo_file(library.photos().find(again).value()).filename(), "hers.jpg");
}

TEST_F(KeptFromRemoving, ItStaysTooWhereItWasListedPastALockThatIsTakenOff) {
    disk.keeps = false;
    const std::string path = library.photos().find(not_hers)->file.path;
    ErasureTable(library.database()).let_go({}, {listed_past_lock(path)});
    EXPECT_TRUE(finish_erasures(library).empty());
    EXPECT_TRUE(ErasureTable(library.database()).files_left().empty());
    EXPECT_EQ(files_with(library.folder(), "other.jpg"), 1U);
}

TEST_F(KeptFromRemoving, ItIsNoFileWithoutARecord) {
    erase_her();
    Library later = Library::open(folder / "library", disk);
    EXPECT_TRUE(files_without_record(later).files.empty());
}

TEST(Erase, SaysWhichRecipesKeepAPartOfHerName) {
    LibraryToErase made;
    Recipe recipe;
    recipe.second_look = SecondLook{};
    recipe.second_look->done_by = "Ysolde";
    made.library.recipes().save(made.look, recipe, {});
    const ClientId ysolde = made.library.clients().add(client_called("Ysolde Vale"));
    const Erased erased =
        erase(made.library, plan_erasure(made.library, ysolde, SharedPhotos::stay),
              parse_date("2026-11-07").value());
    ASSERT_EQ(erased.alike.size(), 1U);
    EXPECT_NE(erased.alike[0].find("says Ysolde, a part of her name"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
