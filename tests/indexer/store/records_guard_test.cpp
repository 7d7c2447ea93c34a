// A service that copies folders puts another file in the place of the records: neither is lost.

#include "indexer/store/records_guard.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include "indexer/disk/folder_lock.h"
#include "indexer/store/records_file.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

using std::filesystem::copy_options;

struct ReplacedRecords : testing::Test, ExampleLibrary {
    // Records of another computer, which nobody else has open.
    Path other_records() {
        const Path other = folder / "other";
        Library made = Library::create(other);
        for (int i = 0; i < 400; ++i) {
            made.clients().add(client_called("Client " + std::to_string(i)));
        }
        return other / records_file_name;
    }

    static std::size_t clients_in(const Path& records) {
        Database database(records);
        return ClientTable(database).all().size();
    }

    // By another program, and without a new file.
    void written_over_by(const Path& other) const {
        output_of("cp " + shell_word(other) + ' ' + shell_word(records));
    }

    std::string asked_of_sqlite(const std::string& sql) const {
        return output_of("sqlite3 " + shell_word(records) + ' ' + shell_word(sql));
    }

    void expect_refused_as_overwritten() {
        try {
            library.clients().add(client_called("Bea Holm"));
            FAIL() << "wrote into a file of others";
        } catch (const StoreError& error) {
            EXPECT_NE(std::string(error.what()).find("was written over"), std::string::npos)
                << error.what();
        }
    }

    // Nothing of the library but its files stays open.
    void close() { library = Library::create(folder / "elsewhere"); }

    Path records = folder / "library" / records_file_name;
    Path waiting = folder / "library" / "records.sqlite-wal";
};

TEST_F(ReplacedRecords, WhileTheyAreOpenNothingIsWrittenAndBothAreKept) {
    library.clients().add(client_called("Ada Vale"));
    const Path other = other_records();
    const auto theirs = read_bytes(other);
    std::filesystem::rename(other, records);
    try {
        library.clients().add(client_called("Bea Holm"));
        FAIL() << "wrote into a file that is gone";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("was replaced"), std::string::npos);
    }
    EXPECT_THROW(Transaction{library.database()}, StoreError);
    EXPECT_EQ(read_bytes(records), theirs);
    EXPECT_EQ(library.clients().all().size(), 2U) << "she can still read";
    EXPECT_EQ(std::filesystem::status(folder / "library" / "records.sqlite.kept-1").permissions(),
              std::filesystem::perms{0600})
        << "others on the computer must not read it";
    EXPECT_EQ(clients_in(folder / "library" / "records.sqlite.kept-1"), 2U);
    EXPECT_FALSE(std::filesystem::exists(folder / "library" / "records.sqlite.kept-2"));
}

TEST_F(ReplacedRecords, WrittenOverWhileTheyAreOpenNothingIsJoinedToThem) {
    const Path other = other_records();
    library.clients().add(client_called("Ada Vale"));
    const auto theirs = read_bytes(other);
    const auto changes = read_bytes(waiting);
    ASSERT_FALSE(changes.empty());
    written_over_by(other);
    expect_refused_as_overwritten();
    EXPECT_THROW(Transaction{library.database()}, StoreError);
    EXPECT_THROW(copy_records(library, folder / "copy"), StoreError) << "a backup of a mixture";
    EXPECT_THROW(Library::open(folder / "library"), StoreError) << "by another window";
    close();
    EXPECT_EQ(read_bytes(records), theirs) << "closing carried changes into it";
    EXPECT_EQ(read_bytes(folder / "library" / "records.sqlite.kept-1"), theirs);
    EXPECT_EQ(read_bytes(folder / "library" / "records.sqlite.kept-1-wal"), changes);
    EXPECT_FALSE(std::filesystem::exists(folder / "library" / "records.sqlite.kept-2"));
    EXPECT_THROW(Library::open(folder / "library"), StoreError);
    std::filesystem::remove(waiting);
    std::filesystem::remove(folder / "library" / "records.sqlite-shm");
    EXPECT_EQ(Library::open(folder / "library").clients().all().size(), 400U);
}

TEST_F(ReplacedRecords, AnOlderStateOfTheSameRecordsIsAnotherFile) {
    asked_of_sqlite("PRAGMA wal_checkpoint(TRUNCATE)");
    const Path older = folder / "older";
    output_of("cp " + shell_word(records) + ' ' + shell_word(older));
    for (int i = 0; i < 40; ++i) library.clients().add(client_called("Ada " + std::to_string(i)));
    asked_of_sqlite("PRAGMA wal_checkpoint(TRUNCATE)");
    library.clients().add(client_called("Bea Vale"));
    written_over_by(older);
    const auto theirs = output_of("sha256sum < " + shell_word(older));
    expect_refused_as_overwritten();
    close();
    EXPECT_EQ(output_of("sha256sum < " + shell_word(records)), theirs);
}

TEST_F(ReplacedRecords, WhatIsClosedRightAfterwardsIsNotJoinedEither) {
    const Path other = other_records();
    library.clients().add(client_called("Ada Vale"));
    const auto theirs = read_bytes(other);
    written_over_by(other);
    close();
    EXPECT_EQ(read_bytes(records), theirs);
    EXPECT_TRUE(std::filesystem::exists(waiting));
    EXPECT_TRUE(std::filesystem::exists(folder / "library" / "records.sqlite.kept-1-wal"));
}

TEST_F(ReplacedRecords, ReplacedBetweenBeginAndCommitWhatWasSavedBeforeIsKept) {
    const Path other = other_records();
    const auto theirs = read_bytes(other);
    library.clients().add(client_called("Ada Vale"));
    {
        Transaction transaction(library.database());
        library.clients().add(client_called("Bea Holm"));
        std::filesystem::rename(other, records);
        try {
            transaction.commit();
            FAIL() << "wrote into a file that is gone";
        } catch (const StoreError& error) {
            EXPECT_NE(std::string(error.what()).find("was replaced"), std::string::npos);
        }
    }
    close();
    EXPECT_EQ(clients_in(folder / "library" / "records.sqlite.kept-1"), 2U);
    EXPECT_EQ(read_bytes(records), theirs);
}

TEST_F(ReplacedRecords, WrittenOverBetweenBeginAndCommitTheChangeIsNotMade) {
    const Path other = other_records();
    Transaction transaction(library.database());
    library.clients().add(client_called("Ada Vale"));
    written_over_by(other);
    EXPECT_THROW(transaction.commit(), StoreError);
}

// Another program of hers, this one and a second window carry changes over at any time.
TEST_F(ReplacedRecords, WhatSqliteItselfWritesIsNoOtherFile) {
    for (int round = 0; round < 20; ++round) {
        const std::string name = "Ada " + std::to_string(round);
        library.clients().add(client_called(name));
        if (round % 3 == 0) asked_of_sqlite("PRAGMA wal_checkpoint(TRUNCATE)");
        if (round % 3 == 1) library.database().handle().exec("PRAGMA wal_checkpoint(PASSIVE)");
        if (round % 4 == 0) {
            Library second = Library::open(folder / "library");
            second.clients().add(client_called(name + " again"));
            (void)settled_state(second);
        }
    }
    asked_of_sqlite("VACUUM; PRAGMA wal_checkpoint(TRUNCATE)");
    EXPECT_NO_THROW(library.clients().add(client_called("Bea Holm")));
    EXPECT_FALSE(std::filesystem::exists(folder / "library" / "records.sqlite.kept-1"));
    reopen();
    EXPECT_EQ(library.clients().all().size(), 27U);
}

TEST_F(ReplacedRecords, ChangesThatBelongToAnotherFileAreNotJoinedToThem) {
    const Path other = other_records();
    library.clients().add(client_called("Ada Vale"));
    const Path left = folder / "left";  // as a crash leaves it
    std::filesystem::copy(folder / "library", left, copy_options::recursive);
    std::filesystem::copy_file(other, left / records_file_name, copy_options::overwrite_existing);
    const auto theirs = read_bytes(left / records_file_name);
    const auto changes = read_bytes(left / "records.sqlite-wal");
    ASSERT_FALSE(changes.empty());
    EXPECT_THROW(Library::open(left), StoreError);
    EXPECT_THROW(Library::open(left), StoreError);
    EXPECT_FALSE(std::filesystem::exists(left / "records.sqlite.kept-2")) << "once is enough";
    EXPECT_EQ(read_bytes(left / records_file_name), theirs);
    EXPECT_EQ(read_bytes(left / "records.sqlite.kept-1"), theirs);
    EXPECT_EQ(read_bytes(left / "records.sqlite.kept-1-wal"), changes);
    std::filesystem::remove(left / "records.sqlite-wal");
    std::filesystem::remove(left / "records.sqlite-shm");
    EXPECT_EQ(Library::open(left).clients().all().size(), 400U);
}

TEST_F(ReplacedRecords, ALibraryThatWasCopiedWithItsChangesIsOpenedAsEver) {
    library.clients().add(client_called("Ada Vale"));
    const Path copied = folder / "copied";
    std::filesystem::copy(folder / "library", copied, copy_options::recursive);
    ASSERT_GT(std::filesystem::file_size(copied / "records.sqlite-wal"), 0U);
    for (const char* left : {"records.sqlite.trial", "records.sqlite.trial-wal"}) {
        write_bytes(copied / left, std::as_bytes(std::span("half", 4)));  // by a kill
    }
    EXPECT_EQ(Library::open(copied).clients().all().size(), 2U);
    for (const Path& file : files_in(copied)) {
        EXPECT_EQ(file.filename().string().find("kept"), std::string::npos) << file;
        EXPECT_EQ(file.filename().string().find("trial"), std::string::npos) << file;
    }
}

TEST_F(ReplacedRecords, ATrialThatIsUnderWayIsLeftToWhoBeganIt) {
    library.clients().add(client_called("Ada Vale"));
    const Path copied = folder / "copied";
    std::filesystem::copy(folder / "library", copied, copy_options::recursive);
    write_bytes(copied / "records.sqlite.trial", std::as_bytes(std::span("half", 4)));
    {
        const FolderLock other(copied);
        EXPECT_THROW(Library::open(copied), StoreError);
        EXPECT_TRUE(std::filesystem::exists(copied / "records.sqlite.trial"));
    }
    EXPECT_EQ(Library::open(copied).clients().all().size(), 2U);
    EXPECT_FALSE(std::filesystem::exists(copied / "records.sqlite.trial"));
    EXPECT_FALSE(std::filesystem::exists(copied / "records.sqlite.kept-1"));
}

}  // namespace
}  // namespace quarterturn
