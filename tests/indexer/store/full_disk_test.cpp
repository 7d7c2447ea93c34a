// A library on a disk that takes not a byte more. What can be read is looked at.

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>

#include "indexer/store/erasure_table.h"
#include "indexer/store/library.h"
#include "tests/support/child.h"
#include "tests/support/example_library.h"
#include "tests/support/fill_disk.h"

namespace quarterturn {
namespace {

constexpr long small_disk_bytes = 8'000'000;
constexpr const char* no_such_disk = "The system lets us have no disk of our own.";

std::string refused_with(const std::function<void()>& act) try {
    act();
    return "was taken\n";
} catch (const NoRoomForRecords& error) {
    return error.what() + std::string("\n");
}

// What is seen in a library on a full disk, a line each, and what is said to who would change it.
std::string looked_at(const Path& place) {
    Library library = Library::open_or_look(place);
    std::string told = library.why_only_to_look() + '\n';
    for (const Client& client : library.clients().all()) told += client.name + '\n';
    told += refused_with([&] { library.clients().add(client_called("Ada Holm")); });
    told += refused_with([&] { Transaction{library.database()}; });
    ToErase what;
    what.client = library.clients().all().at(0);
    ErasureTable(library.database()).look_after(what, [&] {
        told += std::to_string(library.clients().all().size()) + " then\n";
    });
    return told + std::to_string(library.clients().all().size()) + " now\n";
}

std::string words_for(const Path& place) {
    return "There is no room left on the disk that holds " + place.string() +
           ": free some there, and open the library again. What was saved before is kept.\n";
}

void expect_looked_at(const std::optional<std::string>& answer, const Path& place) {
    const std::string why = words_for(place);
    EXPECT_EQ(*answer, why + "Mira Vale\n" + why + why + "0 then\n1 now\n");
}

TEST(FullDisk, ALibraryIsLookedAtAndNotChanged) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    const auto answer = on_small_disk(folder.path(), small_disk_bytes, [&] {
        Library::create(place).clients().add(client_called("Mira Vale"));
        fill_disk_of(folder.path());
        return looked_at(place);
    });
    if (!answer) GTEST_SKIP() << no_such_disk;
    expect_looked_at(answer, place);
}

// The program ended without closing its library, and the computer was started again.
TEST(FullDisk, WhatWasSavedLastIsLookedAtToo) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    const auto answer = on_small_disk(folder.path(), small_disk_bytes, [&] {
        Library::create(place);
        in_child([&]() -> std::string {
            Library killed = Library::open(place);
            killed.clients().add(client_called("Mira Vale"));
            ::_exit(0);
        });
        std::filesystem::remove(place / "records.sqlite-shm");
        const auto waiting = std::filesystem::file_size(place / "records.sqlite-wal");
        fill_disk_of(folder.path());
        std::string told = looked_at(place);
        const bool kept = std::filesystem::file_size(place / "records.sqlite-wal") == waiting;
        return kept && waiting > 0 ? told : told + "what waits was not kept";
    });
    if (!answer) GTEST_SKIP() << no_such_disk;
    expect_looked_at(answer, place);
}

// Once there is room, it is as it was.
TEST(FullDisk, ALibraryIsOpenedToBeChangedWhenThereIsRoomAgain) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    const auto answer = on_small_disk(folder.path(), small_disk_bytes, [&]() -> std::string {
        Library::create(place).clients().add(client_called("Mira Vale"));
        fill_disk_of(folder.path());
        const Library looked = Library::open_or_look(place);
        std::filesystem::remove(folder / "filler");
        Library library = Library::open_or_look(place);
        library.clients().add(client_called("Ada Holm"));
        return looked.only_to_look() && !library.only_to_look() ? "both" : "one";
    });
    if (!answer) GTEST_SKIP() << no_such_disk;
    EXPECT_EQ(*answer, "both");
}

// The index of the log does not grow for another reason than that the disk is full.
TEST(FullDisk, IsNotBlamedForWhatElseKeepsRecordsFromBeingWritten) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    Library::create(place);
    const std::string answer = in_child([&]() -> std::string {
        constexpr rlim_t smaller_than_the_index = 4096;
        const rlimit limit{smaller_than_the_index, smaller_than_the_index};
        std::signal(SIGXFSZ, SIG_IGN);
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return "no limit";
        Library::open(place);
        return "opened";
    });
    EXPECT_EQ(answer,
              "The library's records could not be used (File too large): try again; what was saved "
              "before is kept.");
}

TEST(LibraryOpenedAgain, SaysToConnectTheDriveWhenItIsGone) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    Library::create(place);
    EXPECT_NO_THROW(Library::open_again(place, real_file_system()));
    std::filesystem::rename(place, folder / "elsewhere");
    try {
        Library::open_again(place, real_file_system());
        ADD_FAILURE() << "opened";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("connect the drive"), std::string::npos)
            << error.what();
    }
}

}  // namespace
}  // namespace quarterturn
