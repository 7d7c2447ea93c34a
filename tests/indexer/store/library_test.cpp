#include "indexer/store/library.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "indexer/store/lock_library.h"
#include "tests/support/child.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

std::string refusal(const std::function<void()>& work) {
    try {
        work();
        return "not refused";
    } catch (const StoreError& error) {
        return error.what();
    }
}

bool says(const std::string& sentence, const std::string& part) {
    return sentence.find(part) != std::string::npos;
}

TEST(LibraryFolder, IsMadeInANewOrEmptyFolderAndOpenedAgain) {
    const TemporaryFolder folder;
    const ClientId id = Library::create(folder / "a" / "b").clients().add(client_called("Mira"));
    EXPECT_EQ(Library::open(folder / "a" / "b").clients().find(id)->name, "Mira");
    std::filesystem::create_directory(folder / "empty");
    Library::create(folder / "empty");
    EXPECT_EQ(Library::open(folder / "empty").clients().all().size(), 0U);
}

// Closing a file lets go of every lock that the process has on it (fcntl(2), and "How To Corrupt An
// SQLite Database File", 2.2): another program would take the last changes away with the log.
TEST(LibraryFolder, KeepsHoldOfTheRecordsThroughAnotherOpeningAndAnotherProgram) {
    const TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    library.clients().add(client_called("Mira"));
    Library::open(folder / "library");
    const std::string count = "sqlite3 " + shell_word(folder / "library" / "records.sqlite") +
                              " 'SELECT count(*) FROM client'";
    EXPECT_EQ(output_of(count), "1\n");
    library.clients().add(client_called("Noor"));
    EXPECT_EQ(output_of(count), "2\n");
    EXPECT_TRUE(std::filesystem::exists(folder / "library" / "records.sqlite-wal"));
}

TEST(LibraryFolder, IsForTheUserAlone) {
    const TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    library.clients().add(client_called("Mira"));  // now the write-ahead files are there too
    int seen = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder / "library")) {
        struct stat found {};
        ASSERT_EQ(::stat(entry.path().c_str(), &found), 0);
        EXPECT_EQ(found.st_mode & 07777U, entry.is_directory() ? 0700U : 0600U) << entry.path();
        ++seen;
    }
    EXPECT_GE(seen, 6);
}

TEST(LibraryFolder, IsNotMadeWhereSomethingIs) {
    const TemporaryFolder folder;
    real_file_system().write_new(folder / "letter.txt", {});
    EXPECT_TRUE(says(refusal([&] { Library::create(folder.path()); }), "letter.txt lies in it"));
    EXPECT_EQ(real_file_system().list(folder.path()).size(), 1U);
    Library::create(folder / "library").clients().add(client_called("Mira"));
    EXPECT_TRUE(says(refusal([&] { Library::create(folder / "library"); }), "a library already"));
    EXPECT_EQ(Library::open(folder / "library").clients().all().size(), 1U);
}

TEST(LibraryFolder, CanBeMadeAgainAfterAnyFailure) {
    int failures = 0;
    for (bool made = false; !made; ++failures) {
        const TemporaryFolder folder;
        FailingDisk disk;
        disk.fail_from_call(failures + 1, ENOSPC);
        try {
            Library::create(folder / "library", disk);
            made = true;
        } catch (const DiskError& error) {
            EXPECT_TRUE(error.disk_full());
        }
        disk.heal();
        if (std::filesystem::exists(folder / "library" / "records.sqlite")) {
            Library::open(folder / "library", disk);
        } else {
            Library::create(folder / "library", disk).clients().add(client_called("Mira"));
        }
    }
    EXPECT_GT(failures, 8) << "every call to the disk was made to fail";
}

TEST(LibraryFolder, SaysWhatIsNoLibrary) {
    const TemporaryFolder folder;
    EXPECT_TRUE(says(refusal([&] { Library::open(folder / "none"); }),
                     "There is no folder " + (folder / "none").string()));
    EXPECT_TRUE(says(refusal([&] { Library::open(folder.path()); }), "is no library"));
    EXPECT_TRUE(real_file_system().list(folder.path()).empty()) << "looking must not leave traces";
}

TEST(LibraryFolder, SaysThatTheRecordsAreGoneAndWhereTheyMayBeHadFrom) {
    const TemporaryFolder folder;
    const Path place = folder / "library";
    { Library::create(place); }
    std::filesystem::create_directories(place / "photos" / "2026");
    std::filesystem::remove(place / "records.sqlite");
    EXPECT_TRUE(says(refusal([&] { Library::open(place); }),
                     "(records.sqlite) are gone: look for that file and put it back, or make the "
                     "library again from a backup"));
}

TEST(LibraryFolder, MakesTheCacheAgainWhenItWasDeleted) {
    const TemporaryFolder folder;
    Library::create(folder / "library");
    std::filesystem::remove_all(folder / "library" / "cache");
    std::filesystem::remove_all(folder / "library" / "incoming");
    Library library = Library::open(folder / "library");
    EXPECT_TRUE(std::filesystem::is_directory(library.cache_folder()));
    EXPECT_TRUE(std::filesystem::is_directory(library.incoming_folder()));
}

TEST(LibraryFolder, SaysWhoMayNotOpenIt) {
    const TemporaryFolder folder;
    std::filesystem::permissions(folder.path(), std::filesystem::perms{0755});
    Library::create(folder / "library");
    if (::geteuid() != 0)
        std::filesystem::permissions(folder / "library", std::filesystem::perms{});
    const std::string answer = as_stranger([&]() -> std::string {
        Library::open(folder / "library");
        return "opened";
    });
    if (::geteuid() != 0) {
        std::filesystem::permissions(folder / "library", std::filesystem::perms{0700});
    }
    EXPECT_TRUE(says(answer, "may not be read")) << answer;
}

TEST(LibraryFolder, SaysWhenItsRecordsMayNotBeChanged) {
    if (::geteuid() != 0) GTEST_SKIP() << "Only root can give a library to somebody else.";
    const TemporaryFolder folder;
    std::filesystem::permissions(folder.path(), std::filesystem::perms{0755});
    Library::create(folder / "library");
    std::filesystem::permissions(folder / "library", std::filesystem::perms{0755});
    std::filesystem::permissions(folder / "library" / "records.sqlite",
                                 std::filesystem::perms{0644});
    const std::string answer = as_stranger([&]() -> std::string {
        Library::open(folder / "library");
        return "opened";
    });
    EXPECT_TRUE(says(answer, "may not be changed") || says(answer, "you may write in it"))
        << answer;
}

TEST(LibraryFolder, IsLookedAtOnADiskThatCanOnlyBeRead) {
    const TemporaryFolder folder;
    const Path place = folder / "a library?";
    Library::create(place).clients().add(client_called("Mira Vale"));
    const auto answer = on_read_only_disk(place, [&]() -> std::string {
        const std::string refused = refusal([&] { Library::open(place); });
        Library library = Library::open_to_look(place);
        std::string told = library.clients().all().at(0).name + '\n' + refused + '\n';
        told += refusal([&] { library.clients().add(client_called("Ada")); }) + '\n';
        return told + refusal([&] { Transaction{library.database()}; });
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk that can only be read.";
    const std::string why = "lies on a disk that can only be read: copy the library's folder";
    EXPECT_TRUE(answer->starts_with("Mira Vale\n")) << *answer;
    std::size_t times = 0;
    for (auto found = answer->find(why); found != answer->npos;
         found = answer->find(why, found + 1)) {
        ++times;
    }
    EXPECT_EQ(times, 3U) << *answer;
}

// Copied there as a whole while changes waited beside the records.
TEST(LibraryFolder, CopiedToSuchADiskWithWhatWasSavedLastSaysWhatToDo) {
    const TemporaryFolder folder;
    Library open = Library::create(folder / "library");
    open.clients().add(client_called("Mira Vale"));
    const Path copied = folder / "copied";
    output_of("cp -a " + shell_word(folder / "library") + ' ' + shell_word(copied));
    const auto answer = on_read_only_disk(copied, [&]() -> std::string {
        try {
            Library::open(copied);
            return "opened";
        } catch (const RecordsUnwritable&) {
            return refusal([&] { Library::open_to_look(copied); });
        }
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk that can only be read.";
    EXPECT_TRUE(says(*answer, "what was last saved waits in a file beside it: copy the library"))
        << *answer;
}

TEST(LibraryFolder, OnSuchADiskIsNotLockedAndSaysWhy) {
    const TemporaryFolder folder;
    Library::create(folder / "library");
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    const auto answer = on_read_only_disk(folder / "library", [&]() -> std::string {
        return refusal([&] { lock_library(real_file_system(), folder / "library", lock, {}); });
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk that can only be read.";
    EXPECT_TRUE(says(*answer, "lies on a disk that can only be read: copy the library")) << *answer;
}

TEST(LibraryFolder, LookedAtItIsNotChanged) {
    const TemporaryFolder folder;
    Library::create(folder / "library").clients().add(client_called("Mira Vale"));
    std::filesystem::remove(folder / "library" / "records.sqlite.opened");
    std::filesystem::remove_all(folder / "library" / "cache");
    const auto before = real_file_system().list(folder / "library");
    {
        Library library = Library::open_to_look(folder / "library");
        EXPECT_EQ(library.clients().all().size(), 1U);
        EXPECT_THROW(library.clients().add(client_called("Ada")), RecordsUnwritable);
        EXPECT_EQ(real_file_system().list(folder / "library"), before);
    }
    EXPECT_EQ(real_file_system().list(folder / "library"), before);
}

TEST(LibraryFolder, ToLookAtItNothingMayWaitToBeSaved) {
    const TemporaryFolder folder;
    Library open = Library::create(folder / "library");
    open.clients().add(client_called("Mira Vale"));
    const Path copied = folder / "copied";
    std::filesystem::copy(folder / "library", copied, std::filesystem::copy_options::recursive);
    EXPECT_TRUE(says(refusal([&] { Library::open_to_look(copied); }), "waits in a file beside it"));
}

TEST(LibraryFolder, KeepsWhatWasSavedWhenTheDiskFillsUp) {
    const TemporaryFolder folder;
    const auto answer = on_small_disk(folder.path(), 1'000'000, [&]() -> std::string {
        Library library = Library::create(folder / "library");
        std::size_t added = 0;
        std::string sentence = "never full";
        try {
            for (; added < 100'000; ++added) {
                Client client = client_called("client " + std::to_string(added));
                client.note.assign(2000, 'n');
                library.clients().add(client);
            }
        } catch (const StoreError& error) {
            sentence = error.what();
        }
        const auto kept = Library::open(folder / "library").clients().all().size();
        return (kept == added && added > 0 ? "all kept: " : "lost some: ") + sentence;
    });
    if (!answer) GTEST_SKIP() << "This system does not let a test have a small disk.";
    EXPECT_EQ(*answer,
              "all kept: There is no room left on the disk that holds the library: free some and "
              "try again. What was saved before is kept.");
}

}  // namespace
}  // namespace quarterturn
