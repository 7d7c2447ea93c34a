#include "indexer/store/database.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <SQLiteCpp/SQLiteCpp.h>
#include <array>

#include "indexer/disk/checksum.h"
#include "indexer/store/migrations/migrations.h"
#include "tests/indexer/store/version_1.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

// Schema and rows of every table, as text.
std::string everything_in(SQLite::Database& handle) {
    std::string text;
    SQLite::Statement schema(handle, "SELECT name, sql FROM sqlite_schema ORDER BY name");
    std::vector<std::string> tables;
    while (schema.executeStep()) {
        const std::string sql = schema.getColumn(1).getString();
        text += sql + '\n';
        if (sql.starts_with("CREATE TABLE")) tables.push_back(schema.getColumn(0).getString());
    }
    for (const std::string& table : tables) {
        SQLite::Statement rows(handle, "SELECT * FROM " + table);
        while (rows.executeStep()) {
            for (int i = 0; i < rows.getColumnCount(); ++i)
                text += rows.getColumn(i).getString() + '|';
            text += '\n';
        }
    }
    return text;
}

class DatabaseFile : public testing::Test {
  protected:
    void write(const std::string& text) {
        real_file_system().write_new(file, std::as_bytes(std::span(text)));
    }
    void write_sql(const std::string& sql) {
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec(sql);
    }
    std::string checksum() { return sha256(real_file_system().read(file, any_size)); }
    std::string refusal() {
        try {
            Database opened(file);
            return "not refused";
        } catch (const StoreError& error) {
            return error.what();
        }
    }
    void expect_refused_untouched(const std::string& because) {
        const std::string before = checksum();
        const std::string sentence = refusal();
        EXPECT_NE(sentence.find(because), std::string::npos) << sentence;
        EXPECT_EQ(checksum(), before);
        EXPECT_EQ(real_file_system().list(folder.path()), std::vector{file});
    }

    TemporaryFolder folder;
    Path file = folder / "records.sqlite";
};

TEST_F(DatabaseFile, IsMadeDurable) {
    Database database(file);
    const auto value = [&](const char* pragma) {
        return database.handle().execAndGet(std::string("PRAGMA ") + pragma).getString();
    };
    EXPECT_EQ(value("journal_mode"), "wal");
    EXPECT_EQ(value("synchronous"), "2");  // FULL
    EXPECT_EQ(value("foreign_keys"), "1");
    EXPECT_EQ(value("secure_delete"), "1") << "what she erases must not stay in the file";
    EXPECT_EQ(value("trusted_schema"), "0");
    EXPECT_EQ(database.schema_version(), static_cast<int>(all_migrations().size()));
}

TEST_F(DatabaseFile, RefusesTextAndLeavesItAlone) {
    write("Dear diary, today I made a low twisted bun and it held until four in the morning.");
    expect_refused_untouched("no library file");
}

TEST_F(DatabaseFile, RefusesAnEmptyFileAndLeavesItAlone) {
    write("");
    expect_refused_untouched("is empty, and holds no records any longer");
}

TEST_F(DatabaseFile, RefusesAnotherProgramsRecordsAndLeavesThemAlone) {
    write_sql("CREATE TABLE client (id INTEGER PRIMARY KEY, name TEXT);");
    expect_refused_untouched("is no library file of this program");
}

TEST_F(DatabaseFile, RefusesANewerVersionAndLeavesItAlone) {
    write_sql(version_1_sql);
    write_sql("PRAGMA user_version = 9999;");
    expect_refused_untouched("newer version");
}

TEST_F(DatabaseFile, OpensVersion1AsItWas) {
    write_sql(version_1_sql);
    Database database(file);
    EXPECT_EQ(database.schema_version(), static_cast<int>(all_migrations().size()));
    const auto photos = PhotoTable(database).all();
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_EQ(photos[0].file.name, "IMG_0042.HEIC");
    EXPECT_EQ(photos[0].moment, at("2026-11-07T10:59:03.61"));
    EXPECT_EQ(photos[0].tags.angle, Angle::left_three_quarter);
    EXPECT_EQ(photos[0].tags.shown.size(), 1U);
    EXPECT_EQ(photos[0].flaws, (std::vector{Flaw::out_of_focus, Flaw::too_dark}));
    EXPECT_EQ(RecipeTable(database).current(LookId{1})->recipe.parting, "side, on her left");
    EXPECT_EQ(SignOffTable(database).standing(LookId{1})->seal.photos.size(), 1U);
    EXPECT_EQ(LookTable(database).shot_list(LookId{1}).size(), 1U);
    EXPECT_EQ(WeddingTable(database).all().at(0).party.size(), 1U);
    EXPECT_EQ(History(database).undo(), "shifted Larkmoor P3 by 47 minutes");
    EXPECT_EQ(PhotoTable(database).all()[0].moment, at("2026-11-07T10:12:03.61"));
    EXPECT_EQ(History(database).undo(), "tagged 1 photo left three-quarter");
    EXPECT_EQ(PhotoTable(database).all()[0].tags.angle, std::nullopt);
}

// What the steps said when they were released, by the first digits of their SHA-256.
constexpr std::array<std::string_view, 25> released_steps{
    "6a71fc802303a43d", "69a88156e9d76b27", "57cd7901a638fe2a", "c4d408d753a0c552",
    "dd7d6af7ea0f5036", "0501937f77bbf071", "bae905d001d0addb", "8bc2ce80958562a4",
    "8d78f16450120967", "38d22b12f160ed33", "0719bbe3f954f583", "0841bd213b371e01",
    "e0867d2477946508", "de2260f10f9bbc9e", "c800c1cc1c0973ad", "5f1ff7acacb0505f",
    "6d3452f6154fbeda", "8b638f27b349f16b", "a5b2d5f07c463975", "d692f76c4f8db3b4",
    "656abdde2d1a073e", "ffeede24520c7ffa", "91959062301bb843", "806e3151b1f99c4f",
    "70318c9723917e8e"};

TEST_F(DatabaseFile, StepsThatWereReleasedNeverChange) {
    const auto steps = all_migrations();
    ASSERT_EQ(steps.size(), released_steps.size()) << "A new step is added to the list above.";
    for (std::size_t i = 0; i < steps.size(); ++i) {
        EXPECT_EQ(sha256(steps[i].sql).substr(0, 16), released_steps[i]) << "step " << i + 1;
    }
}

TEST_F(DatabaseFile, OpensEveryVersionSinceAsItWasAndKeepsACopyOfIt) {
    const int newest = static_cast<int>(all_migrations().size());
    for (int version = 1; version < newest; ++version) {
        const TemporaryFolder place;
        const Path old = place / "records.sqlite";
        {
            SQLite::Database handle(old.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            handle.exec(version_1_sql);
            migrate(handle, all_migrations().first(static_cast<std::size_t>(version)));
        }
        Database database(old);
        EXPECT_EQ(database.schema_version(), newest);
        EXPECT_EQ(ClientTable(database).all().at(0).name, "Mira Okonjo-Lindqvist");
        EXPECT_EQ(PhotoTable(database).all().at(0).tags.angle, Angle::left_three_quarter);
        EXPECT_TRUE(SignOffTable(database).standing(LookId{1}));
        EXPECT_EQ(RecipeTable(database).current(LookId{1})->recipe.parting, "side, on her left");
        EXPECT_EQ(SearchTable(database).find({.words = "m okonjo"}).size(), 1U);
        SQLite::Database kept(old.string() + ".version-" + std::to_string(version) + ".copy");
        EXPECT_EQ(schema_version(kept), version);
        EXPECT_EQ(kept.execAndGet("SELECT name FROM client").getString(), "Mira Okonjo-Lindqvist");
    }
}

TEST_F(DatabaseFile, StepThatFailsFromAnyVersionChangesNothing) {
    const auto all = all_migrations();
    for (std::size_t version = 1; version < all.size(); ++version) {
        SQLite::Database handle(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        handle.exec(version_1_sql);
        migrate(handle, all.first(version));
        const std::string before = everything_in(handle);
        std::vector<Migration> broken(all.begin(), all.end());
        broken.push_back({"UPDATE no_such_table SET x = 1;"});
        EXPECT_THROW(migrate(handle, broken), SQLite::Exception);
        EXPECT_EQ(everything_in(handle), before) << "from version " << version;
        EXPECT_EQ(schema_version(handle), static_cast<int>(version));
    }
}

// Before there was a version 1 there was an empty file of ours.
constexpr const char* version_0_sql =
    "PRAGMA application_id = 0x5174726E; CREATE TABLE t (x); DROP TABLE t;";

TEST_F(DatabaseFile, KeepsACopyBeforeItIsBroughtUpToDate) {
    write_sql(version_0_sql);
    const Database database(file);
    const Path copy = folder / "records.sqlite.version-0.copy";
    ASSERT_TRUE(real_file_system().exists(copy));
    SQLite::Database kept(copy.string());
    EXPECT_EQ(schema_version(kept), 0);
    EXPECT_EQ(kept.execAndGet("SELECT count(*) FROM sqlite_schema").getInt(), 0);
}

TEST_F(DatabaseFile, StaysOldWhenTheCopyCannotBeKept) {
    write_sql(version_0_sql);
    FailingDisk disk;
    int failures = 0;
    for (bool opened = false; !opened;) {
        disk.fail_call(failures + 1, ENOSPC);
        try {
            const Database database(file, disk);
            opened = true;
        } catch (const DiskError&) {
            ++failures;
            SQLite::Database still(file.string());
            EXPECT_EQ(schema_version(still), 0);
            EXPECT_FALSE(std::filesystem::exists(file.string() + ".version-0.copy.new"));
        }
    }
    EXPECT_GE(failures, 4);
}

class Migrating : public DatabaseFile {
  protected:
    std::string written() {
        write_sql(version_1_sql);
        return file.string();
    }
    SQLite::Database handle{written(), SQLite::OPEN_READWRITE};
};

TEST_F(Migrating, TakesTheStepsThatAreMissing) {
    const std::vector<Migration> steps{first_tables,
                                       {"ALTER TABLE client ADD COLUMN phone TEXT;"},
                                       {"UPDATE client SET phone = 'unknown';"}};
    migrate(handle, steps);
    EXPECT_EQ(schema_version(handle), 3);
    EXPECT_EQ(handle.execAndGet("SELECT phone FROM client").getString(), "unknown");
    migrate(handle, steps);
    EXPECT_EQ(schema_version(handle), 3);
}

TEST_F(Migrating, ChangesNothingWhenAStepFails) {
    const std::vector<Migration> steps{first_tables,
                                       {"DELETE FROM setting; ALTER TABLE client ADD COLUMN x;"},
                                       {"UPDATE no_such_table SET x = 1;"}};
    EXPECT_THROW(migrate(handle, steps), SQLite::Exception);
    EXPECT_EQ(schema_version(handle), 1);
    EXPECT_EQ(handle.execAndGet("SELECT count(*) FROM setting").getInt(), 1);
    EXPECT_EQ(handle
                  .execAndGet("SELECT count(*) FROM pragma_table_info('client') "
                              "WHERE name = 'x'")
                  .getInt(),
              0);
}

TEST_F(Migrating, LeavesNothingThatBelongsToNothing) {
    const std::vector<Migration> steps{first_tables, {"DELETE FROM client;"}};
    EXPECT_THROW(migrate(handle, steps), StoreError);
    EXPECT_EQ(handle.execAndGet("SELECT count(*) FROM client").getInt(), 1);
}

TEST(VersionOfOthers, ChangesWhenAnotherConnectionHasChangedTheRecords) {
    ExampleLibrary example;
    Library other = Library::open(example.folder / "library");
    const auto before = other.database().version_of_others();
    other.clients().add(client_called("Ada Lindqvist"));
    EXPECT_EQ(other.database().version_of_others(), before) << "that was its own change";
    example.library.clients().add(client_called("Ida Vale"));
    const auto after = other.database().version_of_others();
    EXPECT_NE(after, before);
    EXPECT_EQ(other.database().version_of_others(), after);
}

}  // namespace
}  // namespace quarterturn
