// A service that copies folders puts another file in the place of the records: neither is lost.

#include "indexer/store/records_guard.h"

#include "indexer/disk/folder_lock.h"
#include "indexer/store/records_file.h"
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

    Path records = folder / "library" / records_file_name;
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
    EXPECT_EQ(clients_in(folder / "library" / "records.sqlite.kept-1"), 2U);
    EXPECT_FALSE(std::filesystem::exists(folder / "library" / "records.sqlite.kept-2"));
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
