// Records under the lock, asked by SQLite itself.

#include "indexer/lock/locked_vfs.h"

#include <gtest/gtest.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <memory>
#include <random>

#include "indexer/lock/key_ring.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

class Records {
  public:
    Records(const Path& file, const std::string& vfs) {
        sqlite3* opened = nullptr;
        const int result = sqlite3_open_v2(
            file.c_str(), &opened, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_URI,
            vfs.empty() ? nullptr : vfs.c_str());
        database_.reset(opened);
        if (result != SQLITE_OK) throw std::runtime_error(sqlite3_errmsg(opened));
        int reserved = 40;
        sqlite3_file_control(opened, "main", SQLITE_FCNTL_RESERVE_BYTES, &reserved);
        sqlite3_busy_timeout(opened, 5000);
    }

    // The first column of all rows. Throws std::runtime_error.
    std::string ask(const std::string& sql) {
        std::string answer;
        char* problem = nullptr;
        const auto note = [](void* to, int, char** values, char**) {
            *static_cast<std::string*>(to) += values[0] == nullptr ? "" : values[0];
            return 0;
        };
        const int result = sqlite3_exec(database_.get(), sql.c_str(), note, &answer, &problem);
        const std::string words = problem == nullptr ? "" : problem;
        sqlite3_free(problem);
        if (result != SQLITE_OK) throw std::runtime_error(words);
        return answer;
    }

  private:
    struct Close {
        void operator()(sqlite3* database) const { sqlite3_close(database); }
    };
    std::unique_ptr<sqlite3, Close> database_;
};

constexpr auto many = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n LIMIT 400) ";

struct LockedRecords : ::testing::Test {
    TemporaryFolder folder;
    Path file = folder / "records.sqlite";

    LockedRecords() { key_ring::add(folder.path(), new_library_keys()); }
    ~LockedRecords() override { key_ring::forget(folder.path()); }

    Records open() { return {file, locked_vfs()}; }

    void fill(Records& records) {
        records.ask("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
        records.ask("CREATE TABLE client (id INTEGER PRIMARY KEY, name TEXT, note BLOB)");
        records.ask(std::string(many) +
                    "INSERT INTO client SELECT i, 'Mira Okonjo ' || i, zeroblob(3000) FROM n");
    }

    bool anywhere(const std::string& text) const {
        for (const Path& one : files_in(folder.path())) {
            const Bytes bytes = read_bytes(one);
            const std::string_view all(reinterpret_cast<const char*>(bytes.data()), bytes.size());
            if (all.find(text) != std::string_view::npos) return true;
        }
        return false;
    }
};

TEST_F(LockedRecords, HoldNothingThatCanBeRead) {
    Records records = open();
    fill(records);
    EXPECT_TRUE(std::filesystem::exists(file.string() + "-wal"));
    for (const char* text : {"Mira", "CREATE TABLE", "SQLite format"}) {
        EXPECT_FALSE(anywhere(text)) << text;
    }
    records.ask("PRAGMA wal_checkpoint(TRUNCATE)");
    for (const char* text : {"Mira", "CREATE TABLE", "SQLite format"}) {
        EXPECT_FALSE(anywhere(text)) << text;
    }
}

// The power went while the log was being written into the records: the log still has the page.
TEST_F(LockedRecords, OpenWhenTheFirstPageIsTornAndTheLogHasIt) {
    const Path torn = folder / "torn.sqlite";
    {
        Records records = open();
        fill(records);
        records.ask("PRAGMA wal_checkpoint(TRUNCATE); CREATE TABLE look (id INTEGER)");
        std::filesystem::copy_file(file, torn);
        std::filesystem::copy_file(file.string() + "-wal", torn.string() + "-wal");
    }
    Bytes bytes = read_bytes(torn);
    std::fill_n(bytes.begin(), 2048, std::byte{7});
    write_bytes(torn, bytes);
    {
        Records records(torn, locked_vfs());
        EXPECT_EQ(records.ask("SELECT count(*) FROM client"), "400");
        EXPECT_EQ(records.ask("SELECT count(*) FROM look"), "0");
        EXPECT_EQ(records.ask("PRAGMA integrity_check"), "ok");
        records.ask("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    EXPECT_EQ(Records(torn, locked_vfs()).ask("PRAGMA integrity_check"), "ok");
    write_bytes(torn, bytes);  // and no log
    EXPECT_THROW(Records(torn, locked_vfs()).ask("SELECT count(*) FROM client"),
                 std::runtime_error);
}

TEST_F(LockedRecords, AreSoundAfterEverythingSqliteDoes) {
    {
        Records records = open();
        fill(records);
        records.ask(
            "BEGIN; DELETE FROM client WHERE id % 3 = 0; SAVEPOINT s; DELETE FROM client; "
            "ROLLBACK TO s; COMMIT");
        records.ask("BEGIN; UPDATE client SET name = 'x'; ROLLBACK");
        // More than the page cache holds, so that frames of the log are written over.
        records.ask(
            "PRAGMA cache_size = 10; BEGIN; UPDATE client SET note = zeroblob(3500); "
            "UPDATE client SET note = zeroblob(3600); COMMIT");
        records.ask(
            "CREATE VIRTUAL TABLE words USING fts5(text); INSERT INTO words SELECT name "
            "FROM client; CREATE INDEX by_name ON client(name, note); VACUUM");
        EXPECT_EQ(records.ask("PRAGMA integrity_check"), "ok");
    }
    Records again = open();
    EXPECT_EQ(again.ask("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(again.ask("SELECT count(*) FROM client"), "267");
    EXPECT_EQ(again.ask("SELECT count(*) FROM words WHERE words MATCH 'mira'"), "267");
}

TEST_F(LockedRecords, GoInAndOutOfTheLockByVacuumInto) {
    const TemporaryFolder elsewhere;
    const std::string plain = elsewhere / "plain.sqlite";
    const std::string back = elsewhere / "back.sqlite";
    Records outside(plain, "");
    fill(outside);
    outside.ask("VACUUM INTO 'file:" + file.string() + "?vfs=" + locked_vfs() + "'");
    EXPECT_FALSE(anywhere("Mira"));
    EXPECT_EQ(open().ask("SELECT count(*) FROM client"), "400");
    open().ask("VACUUM INTO 'file:" + back + "?vfs=unix'");
    EXPECT_EQ(output_of("sqlite3 " + back +
                        " 'PRAGMA integrity_check' 'SELECT max(name) FROM "
                        "client'"),
              "ok\nMira Okonjo 99\n");
}

TEST_F(LockedRecords, TellOfAChangedByte) {
    {
        Records records = open();
        fill(records);
    }
    const Bytes whole = read_bytes(file);
    std::mt19937 random(20261107);
    for (int round = 0; round < 40; ++round) {
        Bytes changed = whole;
        changed[random() % changed.size()] ^= std::byte{4};
        write_bytes(file, changed);
        EXPECT_THROW(open().ask("SELECT sum(length(note)), max(name) FROM client"),
                     std::runtime_error);
    }
    Bytes swapped = whole;
    std::swap_ranges(swapped.begin() + 8 * 4096, swapped.begin() + 9 * 4096,
                     swapped.begin() + 9 * 4096);
    write_bytes(file, swapped);
    EXPECT_THROW(open().ask("SELECT sum(length(note)) FROM client"), std::runtime_error);
}

TEST_F(LockedRecords, OpenWithTheirKeyAlone) {
    {
        Records records = open();
        fill(records);
    }
    EXPECT_THROW(Records(file, "").ask("SELECT * FROM client"), std::runtime_error);
    key_ring::add(folder.path(), new_library_keys());
    EXPECT_THROW(open().ask("SELECT * FROM client"), std::runtime_error);
    key_ring::forget(folder.path());
    EXPECT_THROW(open().ask("SELECT * FROM client"), std::runtime_error);
}

TEST_F(LockedRecords, SurviveTheProgramBeingKilled) {
    {
        Records records = open();
        fill(records);
        records.ask("UPDATE client SET note = 0");
    }
    std::mt19937 random(20261107);
    for (int round = 0; round < 12; ++round) {
        const pid_t child = ::fork();
        if (child == 0) {
            Records records = open();
            for (int number = 1;; ++number) {
                records.ask("UPDATE client SET note = note + 1");
                if (number % 7 == 0) records.ask("PRAGMA wal_checkpoint(PASSIVE)");
            }
        }
        ::usleep(static_cast<useconds_t>(random() % 150'000));
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        Records records = open();
        ASSERT_EQ(records.ask("PRAGMA integrity_check"), "ok");
        ASSERT_EQ(records.ask("SELECT count(DISTINCT note) FROM client"), "1") << "half a change";
    }
    EXPECT_GT(std::stoi(open().ask("SELECT note FROM client LIMIT 1")), 12);
}

}  // namespace
}  // namespace quarterturn
