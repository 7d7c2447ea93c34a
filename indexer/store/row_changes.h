#pragma once
// Rows that an edit changed, as SQLite's session extension takes them down.

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/store/database.h"

struct sqlite3_session;
struct sqlite3_value;

namespace quarterturn {

using Value = std::shared_ptr<sqlite3_value>;

// A value for each column of the table; none for a column that stayed as it was.
using Row = std::vector<Value>;

struct RowChange {
    std::string table;
    std::vector<bool> key;  // the columns that tell the row from others; they have their values
    Row before;             // empty: the row was not there
    Row after;              // empty: it is there no more

    bool comes() const { return before.empty(); }
    bool goes() const { return after.empty(); }
};

std::int64_t whole_number(const Value& value);  // 0 for nothing
std::string text_of(const Value& value);
RowChange backwards(RowChange change);

using Changeset = std::string;  // in SQLite's form

std::vector<RowChange> rows_in(const Changeset& changes);

// Takes down what this connection changes in the tables that `wanted` names, from its making on.
// Must end before the database is closed.
class RowRecorder {
  public:
    RowRecorder(Database& database, std::function<bool(std::string_view)> wanted);
    ~RowRecorder();
    RowRecorder(const RowRecorder&) = delete;
    RowRecorder& operator=(const RowRecorder&) = delete;

    // What differs by now; empty when nothing does. Throws StoreError.
    Changeset taken_down();

  private:
    Database& database_;
    std::function<bool(std::string_view)> wanted_;
    sqlite3_session* session_ = nullptr;
};

// A statement whose values are those of rows.
class RowStatement {
  public:
    RowStatement(Database& database, const std::string& sql, const Row& values);
    ~RowStatement();
    RowStatement(const RowStatement&) = delete;
    RowStatement& operator=(const RowStatement&) = delete;

    // False when there is no further row. Throws SQLite::Exception, by which a constraint is told
    // from what else may be wrong.
    bool step();
    Row row() const;

  private:
    struct Prepared;
    std::unique_ptr<Prepared> prepared_;
};

}  // namespace quarterturn
