// What of hers lies in the library and no record names: it goes with her, or is named.

#include <algorithm>

#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/erase.h"
#include "indexer/intake/bin.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/records_file.h"
#include "tests/indexer/erasure/library_to_erase.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

struct Strays : testing::Test, LibraryToErase {
    ~Strays() override { key_ring::forget(place); }

    void put(const Path& file, std::string_view text) const {
        std::filesystem::create_directories((place / file).parent_path());
        write_bytes(place / file, bytes_in(text));
    }
    bool there(const Path& file) const { return std::filesystem::exists(place / file); }
    void move_hers_to(const Path& file) {
        std::filesystem::create_directories((place / file).parent_path());
        std::filesystem::rename(library.photo_file(library.photos().find(hers).value()),
                                place / file);
    }
    Erased erase_her() {
        return erase(library, plan_erasure(library, mira, SharedPhotos::stay),
                     parse_date("2026-11-07").value());
    }
    void close() {
        const Path elsewhere = folder / "elsewhere";
        library = std::filesystem::exists(elsewhere) ? Library::open(elsewhere)
                                                     : Library::create(elsewhere);
    }
    void lock_it(const NewLock& lock) {
        close();
        ASSERT_TRUE(lock_library(real_file_system(), place, lock, {}).problems.empty());
        library = Library::open(place);
    }

    // In the records alone: the files are put somewhere else.
    void keep_for_another(const Path& paper, const Path& picture) {
        const ClientId another = library.clients().add(client_called("Runa Vale"));
        const std::string signed_by = "signed by another";
        library.consents().add_paper(
            {{}, "signed.pdf", paper, sha256(signed_by), std::ssize(signed_by)});
        library.inspirations().add({{}, another, "wish.jpg", picture, sha256("wished by another")});
    }

    static bool says(const std::vector<std::string>& sentences, const std::string& part) {
        return std::ranges::any_of(sentences, [&](const std::string& sentence) {
            return sentence.find(part) != std::string::npos;
        });
    }

    Path place = folder / "library";
};

TEST_F(Strays, AMovedPhotoAndCopiesOfItGoAlong) {
    move_hers_to("photos/misc/moved.jpg");
    put("consents/copy.jpg", "hers.jpg");
    put("photos/misc/other.jpg", "HERS.jpg");
    const Erased erased = erase_her();
    EXPECT_FALSE(there("photos/misc/moved.jpg"));
    EXPECT_FALSE(there("consents/copy.jpg"));
    EXPECT_TRUE(there("photos/misc/other.jpg")) << "of the same size, and not hers";
    ASSERT_EQ(erased.left.size(), 1U);
    EXPECT_TRUE(says(erased.left, "photos/misc/other.jpg is in no record"));
}

TEST_F(Strays, AMovedPhotoOfTheBinGoesWhenItIsEmptied) {
    move_hers_to("photos/misc/moved.jpg");
    put_into_bin(library, {{hers}}, parse_date("2026-11-07").value());
    EXPECT_EQ(empty_bin(library).gone, 1);
    EXPECT_FALSE(there("photos/misc/moved.jpg"));
}

TEST_F(Strays, CopiesAnywhereInTheLibraryGo) {
    const std::vector<Path> copies{"for the album/a.jpg", "cache/a.jpg", "cache/zz/b.jpg",
                                   "incoming/c.jpg", ".hidden/d.jpg"};
    for (const Path& copy : copies) put(copy, "hers.jpg");
    EXPECT_TRUE(erase_her().left.empty());
    for (const Path& copy : copies) EXPECT_FALSE(there(copy)) << copy;
}

TEST_F(Strays, WhatSaysHerNameIsNamedAmongPhotosAndSmallPicturesToo) {
    for (const char* file : {"photos/notes.txt", "photos/misc/notes.txt", "cache/notes.txt"}) {
        put(file, "the bun of Mira Okonjo-Lindqvist");
    }
    const std::vector<std::string> left = erase_her().left;
    EXPECT_EQ(left.size(), 3U);
    for (const char* file : {"photos/notes.txt", "photos/misc/notes.txt", "cache/notes.txt"}) {
        EXPECT_TRUE(says(left, std::string(file) + " still says it")) << file;
    }
}

// As a service leaves it that copies folders.
TEST_F(Strays, OfACopyOfTheRecordsIsSaidThatItGoesAsAWhole) {
    put("records (conflict).sqlite", "SQLite format 3 with Mira Okonjo-Lindqvist in it");
    put("letter.txt", "to Mira Okonjo-Lindqvist");
    const std::vector<std::string> left = erase_her().left;
    EXPECT_TRUE(says(left, "nobody can be taken out of such a copy")) << left.front();
    EXPECT_TRUE(says(left, "open it, take out what is hers, and save it")) << left.back();
}

TEST_F(Strays, WhatCannotBeReadAsTextIsNamedAsWhatCannotBeTold) {
    using namespace std::string_view_literals;
    put("old.gz", "\x1f\x8b\0\0"sv);
    EXPECT_TRUE(says(erase_her().left, "old.gz is in no record and cannot be read as text"));
}

TEST_F(Strays, ItIsSaidBeforehandWhatWillBeLeft) {
    put("photos/misc/retouched.jpg", "retouched");
    put("notes.txt", "call Mira Okonjo-Lindqvist");
    put("edited/a.jpg", "hers.jpg");
    const auto plan = plan_erasure(library, mira, SharedPhotos::stay);
    const std::vector<std::string> before = left_beforehand(library, plan);
    EXPECT_EQ(before.size(), 2U) << "the copy goes";
    EXPECT_EQ(before, erase_her().left);
}

TEST_F(Strays, APhotoOfOthersThatWasMovedByHandIsToBePutBackAndNeverRemoved) {
    const Path aside = "photos/2026/Mira Okonjo-Lindqvist trial/other.jpg";
    std::filesystem::create_directories((place / aside).parent_path());
    std::filesystem::rename(library.photo_file(library.photos().find(not_hers).value()),
                            place / aside);
    put("edited/copy.jpg", "other.jpg");
    const auto plan = plan_erasure(library, mira, SharedPhotos::stay);
    for (const auto& left : {left_beforehand(library, plan), erase_her().left}) {
        EXPECT_TRUE(says(left, "other.jpg is a recorded file, and none of what is erased"));
        EXPECT_TRUE(says(left, "qturn verify gives that its place again; then remove the folder"));
        EXPECT_FALSE(says(left, "emove it"));
    }
    EXPECT_TRUE(there(aside));
}

TEST_F(Strays, APaperAndAPictureOfOthersAreToldApartWhereverTheyWereMoved) {
    const std::string hers_alone = "client " + std::to_string(mira.value);
    keep_for_another("consents/other/signed.pdf", "inspiration/other/wish.jpg");
    put("consents/" + hers_alone + "/signed.pdf", "signed by another");
    put("inspiration/" + hers_alone + "/wish.jpg", "wished by another");
    const auto plan = plan_erasure(library, mira, SharedPhotos::stay);
    for (const auto& left : {left_beforehand(library, plan), erase_her().left}) {
        EXPECT_TRUE(says(left, "signed.pdf is a recorded file, and none of what is erased"));
        EXPECT_TRUE(says(left, "wish.jpg is a recorded file, and none of what is erased"));
        EXPECT_FALSE(says(left, "emove it"));
    }
    EXPECT_TRUE(there("consents/" + hers_alone + "/signed.pdf"));
    EXPECT_TRUE(there("inspiration/" + hers_alone + "/wish.jpg"));
}

TEST_F(Strays, HerPaperAndHerPictureGoWhereverTheyLie) {
    const std::string words = "signed by her";
    library.consents().add_paper(
        {{}, "hers.pdf", "consents/hers.pdf", sha256(words), std::ssize(words)});
    ConsentEntry entry;
    entry.client = mira;
    entry.said_on = parse_date("2026-10-01").value();
    entry.recorded_at = at("2026-10-01T12:00");
    const std::array entries{library.consents().add(entry)};
    library.consents().attach(library.consents().papers().at(0).id, entries);
    library.inspirations().add({{}, mira, "wish.jpg", "inspiration/wish.jpg", sha256("her wish")});
    for (const char* copy : {"edited/a.pdf", "incoming/b.pdf"}) put(copy, words);
    put("edited/c.jpg", "her wish");
    EXPECT_TRUE(erase_her().left.empty());
    for (const char* gone : {"edited/a.pdf", "incoming/b.pdf", "edited/c.jpg"}) {
        EXPECT_FALSE(there(gone)) << gone;
    }
}

TEST_F(Strays, AFolderWithCopiesOfOthersMayBeRemoved) {
    put("photos/2026/Mira Okonjo-Lindqvist trial/copy.jpg", "other.jpg");
    const Erased erased = erase_her();
    EXPECT_TRUE(says(erased.left, "Okonjo-Lindqvist trial still says it: rename it, or remove it"));
    EXPECT_FALSE(says(erased.left, "leave it"));
}

TEST_F(Strays, ItIsSaidBeforehandThatAFolderStaysWhereSomethingElseLiesInIt) {
    const auto foretold = [&](const Path& beside) {
        put(beside, "of the system");
        const auto plan = plan_erasure(library, mira, SharedPhotos::stay);
        return says(left_beforehand(library, plan), "Okonjo-Lindqvist trial still says it");
    };
    move_hers_to("photos/2026/Mira Okonjo-Lindqvist trial/hers.jpg");
    EXPECT_FALSE(foretold("photos/2026/desk.txt"));
    EXPECT_TRUE(foretold("photos/2026/Mira Okonjo-Lindqvist trial/.DS_Store"));
    EXPECT_TRUE(says(erase_her().left, "Okonjo-Lindqvist trial still says it"));
}

TEST_F(Strays, WhereSomebodyElseIsCalledSoAFolderWithHerPhotosIsNotNamed) {
    const ClientId other = library.clients().add(client_called("Mira Vale"));
    const ClientId one_word = library.clients().add(client_called("Mira"));
    for (const ClientId client : {other, one_word}) {
        const Erased erased = erase(library, plan_erasure(library, client, SharedPhotos::stay),
                                    parse_date("2026-11-07").value());
        EXPECT_FALSE(says(erased.left, "photos/2026")) << client.value;
    }
    EXPECT_TRUE(library.photos().find(hers));
}

TEST_F(Strays, AFileThatMayBeAnothersIsNotSimplyToBeRemoved) {
    put("Mira.txt", "pins");
    const ClientId one_word = library.clients().add(client_called("Mira"));
    const Erased erased = erase(library, plan_erasure(library, one_word, SharedPhotos::stay),
                                parse_date("2026-11-07").value());
    EXPECT_TRUE(says(erased.left, "Mira.txt says it, or the name of another: look whose it is"));
}

TEST_F(Strays, WhatWasFoundChangedGoesWhereverThePhotoWasPlacedSince) {
    put("photos/2026/not yet placed/hers (changed).jpg", "changed");
    put("photos/2026/not yet placed/other (changed).jpg", "changed");
    EXPECT_TRUE(erase_her().left.empty());
    EXPECT_FALSE(there("photos/2026/not yet placed/hers (changed).jpg"));
    EXPECT_TRUE(there("photos/2026/not yet placed/other (changed).jpg"));
}

TEST_F(Strays, WhatWasFoundChangedAndMayBeAnothersIsNamed) {
    Photo namesake = example_photo("hers.jpg");
    namesake.file.path = "photos/2026/Runa/hers.jpg";
    namesake.file.sha256 = sha256("of another");
    library.photos().add(namesake);
    put("photos/2026/Runa/hers.jpg", "of another");
    put("photos/2026/Runa/hers (changed).jpg", "changed");
    put("photos/2026/not yet placed/hers (changed) (2).jpg", "changed");
    put("photos/2026/Mira/hers (changed).jpg", "changed");
    const Erased erased = erase_her();
    ASSERT_EQ(erased.left.size(), 1U);
    EXPECT_NE(erased.left[0].find("not yet placed/hers (changed) (2).jpg"), std::string::npos);
    EXPECT_TRUE(there("photos/2026/Runa/hers (changed).jpg")) << "beside the other's";
    EXPECT_TRUE(there("photos/2026/not yet placed/hers (changed) (2).jpg"));
    EXPECT_FALSE(there("photos/2026/Mira/hers (changed).jpg")) << "beside hers";
}

TEST_F(Strays, PapersAndPicturesLeftByAKillGoAndThoseOfOthersAreNamed) {
    const std::string hers_alone = "client " + std::to_string(mira.value);
    put("consents/" + hers_alone + "/signed.pdf", "signed");
    put("inspiration/" + hers_alone + "/wish.jpg", "a wish");
    put("consents/" + hers_alone + "7/signed.pdf", "of another");
    const Erased erased = erase_her();
    EXPECT_FALSE(there("consents/" + hers_alone));
    EXPECT_FALSE(there("inspiration/" + hers_alone));
    EXPECT_TRUE(there("consents/" + hers_alone + "7/signed.pdf"));
    ASSERT_EQ(erased.left.size(), 1U);
    EXPECT_NE(erased.left[0].find(hers_alone + "7/signed.pdf"), std::string::npos);
}

TEST_F(Strays, CopiesOfTheRecordsAreNamedWhateverTheirEnding) {
    const std::vector<std::string> names{"records.sqlite.sync-conflict-20261127", "records.sqlite~",
                                         "records.sqlite.kept-1"};
    ASSERT_TRUE(settled_state(library));
    for (const std::string& name : names) {
        std::filesystem::copy_file(place / "records.sqlite", place / name);
    }
    const Erased erased = erase_her();
    EXPECT_EQ(erased.left.size(), names.size());
    for (const std::string& name : names) EXPECT_TRUE(says(erased.left, "/" + name + " ")) << name;
}

TEST_F(Strays, InALockedLibraryWhatCannotBeReadIsNamedAndSheIsGone) {
    lock_it(new_lock("seven owls below the granary", least_guess_cost()));
    ASSERT_TRUE(settled_state(library));
    for (const char* name : {"records.sqlite.kept-1", "records (conflict).sqlite"}) {
        std::filesystem::copy_file(place / "records.sqlite", place / name);
    }
    put(".DS_Store", "Bud1");
    const Erased erased = erase_her();
    EXPECT_TRUE(erased.erasure.finished);
    EXPECT_FALSE(library.clients().find(mira));
    EXPECT_EQ(erased.left.size(), 3U);
    for (const char* name :
         {"/.DS_Store ", "/records.sqlite.kept-1 ", "/records (conflict).sqlite "}) {
        EXPECT_TRUE(says(erased.left, name)) << name;
    }
}

}  // namespace
}  // namespace quarterturn
