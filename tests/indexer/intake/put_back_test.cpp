// Photos that the library knows and whose files in it are gone or no longer what they were.

#include "indexer/intake/tagging.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

using PutBackTest = ImportTest;

TEST_F(PutBackTest, PutsAFileBackThatIsGoneFromTheLibraryAndKeepsItsTags) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    write_photo(card / "b.jpg", 2);
    bring_in();
    const PhotoId gone = photo_named("a.jpg").id;
    tag(library, std::vector{gone}, {.angle = Angle::left});
    std::filesystem::remove(library.photo_file(photo(gone)));
    const ImportReport report = bring_in();
    EXPECT_TRUE(report.imported.empty());
    EXPECT_EQ(report.already_here.size(), 2U);
    EXPECT_EQ(report.put_back, std::vector{gone});
    EXPECT_EQ(photo(gone).tags.angle, Angle::left);
    expect_files_match_records(library);
}

TEST_F(PutBackTest, PutsAPhotoBackWhoseFileInTheLibraryChangedAndKeepsTheChangedOne) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    const PhotoId changed = bring_in().imported.at(0);
    const Path file = library.photo_file(photo(changed));
    Bytes bytes = read_bytes(file);
    bytes.at(bytes.size() / 2) ^= std::byte{1};  // as large as before
    write_bytes(file, bytes);
    const ImportReport report = bring_in();
    EXPECT_TRUE(report.imported.empty());
    EXPECT_EQ(report.put_back, std::vector{changed});
    ASSERT_EQ(report.set_aside, std::vector{file.parent_path() / "a (changed).jpg"});
    EXPECT_EQ(read_bytes(report.set_aside[0]), bytes);
    EXPECT_EQ(sha256(read_bytes(file)), photo(changed).file.sha256);
    EXPECT_TRUE(bring_in().put_back.empty());
}

TEST_F(PutBackTest, SetsADeadLinkAsideAndTakesTheRestIn) {
    write_photo(card / "a.jpg", 1);
    const PhotoId linked = bring_in().imported.at(0);
    const Path file = library.photo_file(photo(linked));
    std::filesystem::remove(file);
    std::filesystem::create_symlink("/nowhere/at/all.jpg", file);
    write_photo(card / "b.jpg", 2);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_EQ(report.put_back, std::vector{linked});
    EXPECT_EQ(sha256(read_bytes(file)), photo(linked).file.sha256);
}

TEST_F(PutBackTest, WhatCannotBePutBackIsToldAndKeepsNothingElseOut) {
    write_photo(card / "a.jpg", 1, {.taken = "2026:11:07 10:12:03"});
    const Path file = library.photo_file(photo(bring_in().imported.at(0)));
    std::filesystem::remove_all(file.parent_path());
    write_file(file.parent_path(), "a file where the folder belongs");
    write_photo(card / "b.jpg", 2);
    const ImportReport report = bring_in();
    EXPECT_EQ(report.imported.size(), 1U);
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_EQ(report.refused[0].file, card / "a.jpg");
    EXPECT_TRUE(report.put_back.empty());
}

TEST_F(PutBackTest, ALinkToTheCardIsNoCopy) {
    write_photo(card / "a.jpg", 1);
    const Path file = library.photo_file(photo(bring_in().imported.at(0)));
    std::filesystem::remove(file);
    std::filesystem::create_symlink(card / "a.jpg", file);
    const ImportReport report = bring_in();
    EXPECT_TRUE(report.already_here.empty());
    ASSERT_EQ(report.refused.size(), 1U);
    EXPECT_NE(report.refused[0].reason.find(file.string()), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
