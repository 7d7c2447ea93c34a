#pragma once
// The library's one SQLite file: opened in WAL with full durability, brought to the newest schema by
// numbered migrations. A statement that fails throws StoreError, whose what() is a sentence.

#include <filesystem>
#include <memory>
#include <stdexcept>
#include <string>

namespace SQLite {
class Database;
}

namespace quarterturn {

class StoreError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

class Database {
  public:
    // Creates the file (mode 0600) when it is not there. Throws StoreError when it is no library
    // file, is damaged, or was written by a newer version.
    explicit Database(const std::filesystem::path& file);
    ~Database();
    Database(Database&&) noexcept;
    Database& operator=(Database&&) noexcept;

    SQLite::Database& handle() { return *handle_; }
    int schema_version();

  private:
    std::unique_ptr<SQLite::Database> handle_;
};

// Rolls back unless committed. One inside another joins it: only the outermost commits.
class Transaction {
  public:
    explicit Transaction(Database& database);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit();

  private:
    Database& database_;
    bool outermost_;
    bool committed_ = false;
};

}  // namespace quarterturn
