// Taking the lock off where files are damaged, or something lies in their place: nothing is lost.

#include "tests/indexer/store/left_by_lock_fixture.h"

namespace quarterturn {
namespace {

using UnlockInTheWay = LeftByLock;

TEST_F(UnlockInTheWay, WhatIsDamagedKeepsItsKeyUntilItWasPutBack) {
    {
        Library library = Library::open(place);
        Photo photo = example_photo("IMG_2.jpg");
        photo.file.path = "photos/2026/IMG_2.jpg";
        photo.file.sha256 = sha256(std::string("IMG_2.jpg"));
        library.photos().add(photo);
    }
    lock_library(disk, place, lock, {});
    const Path sealed =
        LockedFileSystem(real_file_system(), place, lock.keys).place_of(file_called("IMG_2.jpg"));
    Bytes bytes = read_bytes(sealed);
    bytes.back() ^= std::byte{1};
    write_bytes(sealed, bytes);
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    EXPECT_EQ(report.files, 2);
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_NE(report.problems[0].reason.find("IMG_2.jpg is damaged. It stays locked, and its key"),
              std::string::npos);
    put("IMG_2.jpg", "IMG_x.jpg");  // as long, and something else
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
    EXPECT_EQ(read_bytes(sealed), bytes) << "nothing of it is thrown away";
    EXPECT_TRUE(std::filesystem::exists(place / left_lock_name));
    put("IMG_2.jpg", "IMG_2.jpg");  // as when it is brought in again
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(sealed));
    EXPECT_FALSE(std::filesystem::exists(place / left_lock_name));
    EXPECT_EQ(text_of(file_called("IMG_2.jpg")), "IMG_2.jpg");
}

TEST_F(UnlockInTheWay, WhatLiesInALockedFilesPlaceIsKeptBesideIt) {
    lock_library(disk, place, lock, {});
    put("IMG_2.jpg", "words of mine");
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_NE(report.problems[0].reason.find("lay in the place of IMG_2.jpg while that was locked"),
              std::string::npos);
    EXPECT_EQ(text_of(file_called("IMG_2.jpg")), "IMG_2.jpg");
    EXPECT_EQ(text_of(file_called("IMG_2 (2).jpg")), "words of mine");
    EXPECT_FALSE(std::filesystem::exists(place / left_lock_name));
}

TEST_F(UnlockInTheWay, LinksAndFoldersInALockedFilesPlaceAreKeptBesideIt) {
    write_bytes(folder / "card.jpg", std::as_bytes(std::span("IMG_2.jpg", 9)));
    lock_library(disk, place, lock, {});
    std::filesystem::create_directories(file_called("IMG_1.jpg"));
    std::filesystem::create_symlink(folder / "card.jpg", file_called("IMG_2.jpg"));
    std::filesystem::create_symlink(folder / "nowhere", file_called("IMG_3.jpg"));
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 3U);
    for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
        EXPECT_FALSE(std::filesystem::is_symlink(file_called(name))) << name;
        EXPECT_EQ(text_of(file_called(name)), name);
    }
    EXPECT_TRUE(std::filesystem::is_symlink(file_called("IMG_3 (2).jpg")));
}

TEST_F(UnlockInTheWay, AFileInAFoldersPlaceIsKeptBesideIt) {
    lock_library(disk, place, lock, {});
    std::filesystem::remove_all(place / "photos/2026");
    write_bytes(place / "photos/2026", {});
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
    EXPECT_TRUE(std::filesystem::is_regular_file(place / "photos/2026 (2)"));
    EXPECT_EQ(text_of(file_called("IMG_1.jpg")), "IMG_1.jpg");
}

TEST_F(UnlockInTheWay, ATextOfWhichOnlyTheFirstBytesAreWrongIsNoPlainOne) {
    const Path text = place / "consent-form.txt";
    write_bytes(text, std::as_bytes(std::span("May I?", 6)));
    lock_library(disk, place, lock, {});
    Bytes bytes = read_bytes(text);
    bytes.front() ^= std::byte{1};
    write_bytes(text, bytes);
    EXPECT_TRUE(left_unlocked(disk, place, lock.keys).empty());
    lock_what_is_left(disk, place, lock.keys, {});
    EXPECT_EQ(read_bytes(text), bytes) << "not locked a second time";
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_EQ(text_of(text), "May I?");
}

TEST_F(UnlockInTheWay, LockingThatWasInterruptedIsFinishedBeforeTheLockIsTakenOff) {
    lock_library(disk, place, lock, {});
    LockFile half_done = read_lock(disk, place).value();
    half_done.state = LockState::locking;
    write_lock(disk, place, half_done);
    unlock_for_good(disk, place, lock.keys, {});
    EXPECT_FALSE(read_lock(disk, place));
    EXPECT_EQ(text_of(file_called("IMG_1.jpg")), "IMG_1.jpg");
}

}  // namespace
}  // namespace quarterturn
