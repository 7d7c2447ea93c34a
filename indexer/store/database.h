#pragma once
// The library's one SQLite file: opened in WAL with full durability, brought to the newest schema
// by numbered migrations. A statement that fails throws StoreError, whose what() is a sentence.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>

#include "indexer/disk/file_system.h"
#include "indexer/store/records_known.h"

namespace SQLite {
class Database;
}

namespace quarterturn {

class RecordsWatch;

class StoreError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

// The records lie where nothing can be written.
class RecordsUnwritable : public StoreError {
    using StoreError::StoreError;
};

// Their disk is full. What can be read can be looked at.
class NoRoomForRecords : public RecordsUnwritable {
    using RecordsUnwritable::RecordsUnwritable;
};

enum class Opening { to_change, to_look, to_look_at_copy };

class Database {
  public:
    // Creates the file (mode 0600) when it is not there; an older one is copied beside itself and
    // brought up to date. Throws StoreError when it is no library file, is damaged, may not be
    // changed, or was written by a newer version; DiskError when it cannot be made or copied.
    //
    // To look, the file is opened as it is and nothing is written, here or beside it; nobody may
    // change it meanwhile. Throws StoreError, too, when changes wait beside it or it is older.
    // Where the disk is full, a copy in memory is looked at, with what waits beside the file;
    // others may change that then.
    explicit Database(const Path& file, FileSystem& disk = real_file_system(),
                      Opening opening = Opening::to_change);
    ~Database();
    Database(Database&&) noexcept;
    Database& operator=(Database&&) = delete;

    SQLite::Database& handle() { return *handle_; }
    bool only_to_look() const { return !watch_; }
    // Than they were when they were closed last (records_known.h).
    bool older_than_known() const { return known_ && known_->older(); }
    int schema_version();
    // A number that differs from the one before when another connection, in this program or in
    // another, has changed the records since (SQLite's data_version).
    std::int64_t version_of_others();
    // Throws RecordsUnwritable when it is open to look; StoreError when another file lies in the
    // place of the one that is open, or was written over it: what is written into that would be
    // lost. Copies are made beside it first.
    void refuse_if_replaced();
    // Calls `act` with a copy in memory in the place of the records, which it may change.
    void try_out(const std::function<void()>& act);
    // After a change, which can begin the log anew: what was there is not taken for what comes.
    void look_again();

  private:
    [[noreturn]] void refuse_to_change() const;
    void refuse_replaced();
    void refuse_overwritten();

    Path file_;
    FileSystem* disk_;
    Opening opening_;
    bool kept_ = false;
    bool trying_out_ = false;
    std::unique_ptr<SQLite::Database> handle_;
    std::unique_ptr<RecordsWatch> watch_;  // null when it is open to look
    std::optional<RecordsKnown> known_;    // of the records of a library alone, and no copy
};

// Rolls back what was done since it began, unless committed. One inside another joins it: only the
// outermost brings the changes to the disk. Throws StoreError, also when another program keeps the
// library busy for longer than five seconds.
class Transaction {
  public:
    explicit Transaction(Database& database);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit();

  private:
    void execute(const char* sql);

    Database& database_;
    bool outermost_;
    bool committed_ = false;
};

// What reads while it lives reads the same state of the records, and asks once whether it may,
// rather than with each of thousands of statements. Inside a transaction it is nothing of its own.
// Throws StoreError.
class Reading {
  public:
    explicit Reading(Database& database);
    ~Reading();
    Reading(const Reading&) = delete;
    Reading& operator=(const Reading&) = delete;

  private:
    Database& database_;
    bool outermost_;
};

}  // namespace quarterturn
