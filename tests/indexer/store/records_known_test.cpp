// Older records that were put in the place of the library's while nobody had it open.

#include "indexer/store/records_known.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>

#include "indexer/lock/key_ring.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/records_file.h"
#include "tests/indexer/store/version_1.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

struct KnownRecords : testing::Test, ExampleLibrary {
    ~KnownRecords() override { key_ring::forget(place); }

    void close() {
        const Path elsewhere = folder / "elsewhere";
        library = std::filesystem::exists(elsewhere) ? Library::open(elsewhere)
                                                     : Library::create(elsewhere);
    }
    void open() { library = Library::open(place); }
    void open_again() {
        close();
        open();
    }
    void add(const std::string& name) { library.clients().add(client_called(name)); }
    static void copy(const Path& from, const Path& to) {
        std::filesystem::copy_file(from, to, std::filesystem::copy_options::overwrite_existing);
    }

    Path place = folder / "library";
    Path records = place / records_file_name;
    Path note = place / (records_file_name + std::string(ending_of_note));
    Path kept = folder / "kept";
};

TEST_F(KnownRecords, OlderOnesAreSaidUntilSomethingIsAdded) {
    close();
    copy(records, kept);
    open();
    EXPECT_EQ(library.older_records(), "");
    add("Ada Vale");
    close();
    copy(kept, records);
    for (int time = 0; time < 2; ++time) {
        open();
        EXPECT_TRUE(library.older_records().starts_with(records.string() + " is older"));
        EXPECT_EQ(library.clients().all().size(), 1U);
        close();
    }
    open();
    add("Bea Holm");
    open_again();
    EXPECT_EQ(library.older_records(), "");
}

TEST_F(KnownRecords, NewerOnesAreNot) {
    const Path copied = folder / "copied";
    close();
    std::filesystem::copy(place, copied);
    {
        Library theirs = Library::open(copied);
        for (const char* name : {"Ada Vale", "Bea Holm"}) {
            theirs.clients().add(client_called(name));
        }
    }
    copy(copied / records_file_name, records);
    open();
    EXPECT_EQ(library.older_records(), "");
    EXPECT_EQ(library.clients().all().size(), 3U);
}

// As after a crash, after a restore, or in a library of a version before.
TEST_F(KnownRecords, ANoteThatLagsBehindOrIsGoneTellsNothing) {
    close();
    copy(note, kept);
    open();
    add("Ada Vale");
    close();
    copy(kept, note);
    open();
    EXPECT_EQ(library.older_records(), "");
    close();
    for (const char* text : {"", "9", "no note"}) {
        std::ofstream(note) << text;
        open();
        EXPECT_EQ(library.older_records(), "") << text;
        close();
    }
    std::filesystem::remove(note);
    open();
    EXPECT_EQ(library.older_records(), "");
    close();
    EXPECT_TRUE(std::filesystem::exists(note));
}

TEST_F(KnownRecords, WhatTheProgramItselfTakesBackOrRemovesMakesThemNoOlder) {
    const PhotoId photo = library.photos().add(example_photo("a.jpg"));
    Tags tags;
    tags.look = look;
    library.history().apply({"tagged", {{photo, tags}}, {}});
    library.history().record("added her", [&] { add("Ada Vale"); });
    open_again();
    EXPECT_TRUE(library.history().undo());
    EXPECT_TRUE(library.history().undo());
    open_again();
    EXPECT_EQ(library.older_records(), "") << "undone";
    ToErase her;
    her.client = library.clients().find(mira).value();
    her.photos = {photo};
    her.on = parse_date("2026-11-07").value();
    ErasureTable erasures(library.database());
    erasures.erase(her);
    erasures.finish({});
    open_again();
    EXPECT_EQ(library.older_records(), "") << "erased";
}

TEST_F(KnownRecords, NeitherDoesTheLock) {
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    close();
    ASSERT_TRUE(lock_library(real_file_system(), place, lock, {}).problems.empty());
    open();
    EXPECT_EQ(library.older_records(), "") << "locked";
    add("Ada Vale");
    close();
    ASSERT_TRUE(unlock_for_good(real_file_system(), place, lock.keys, {}).problems.empty());
    open();
    EXPECT_EQ(library.older_records(), "") << "unlocked";
    EXPECT_EQ(library.clients().all().size(), 2U);
}

TEST_F(KnownRecords, NorAnUpdateOfTheProgram) {
    const Path old = folder / "old";
    std::filesystem::create_directory(old);
    SQLite::Database((old / records_file_name).string(),
                     SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec(version_1_sql);
    std::ofstream(old / note.filename()) << "1 1000\n";
    for (int time = 0; time < 2; ++time) {
        EXPECT_EQ(Library::open(old).older_records(), "");
    }
    std::ifstream noted(old / note.filename());
    int version = 0;
    EXPECT_TRUE(noted >> version);
    EXPECT_GT(version, 1);
}

}  // namespace
}  // namespace quarterturn
