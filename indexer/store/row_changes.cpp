#include "indexer/store/row_changes.h"

#define SQLITE_ENABLE_SESSION
#include <sqlite3.h>

#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

void succeed(sqlite3* database, int result) {
    if (result != SQLITE_OK) throw SQLite::Exception(database, result);
}

void succeed_anyhow(int result) {
    if (result != SQLITE_OK) throw SQLite::Exception(sqlite3_errstr(result), result);
}

Value kept(const sqlite3_value* value) {
    if (!value) return nullptr;
    return {sqlite3_value_dup(value), sqlite3_value_free};
}

// One after another of a changeset's rows.
class ChangesReader {
  public:
    explicit ChangesReader(const Changeset& changes) {
        // SQLite reads from it and takes it as no constant.
        succeed_anyhow(sqlite3changeset_start(&changes_, static_cast<int>(changes.size()),
                                              const_cast<char*>(changes.data())));
    }
    ~ChangesReader() { sqlite3changeset_finalize(changes_); }
    ChangesReader(const ChangesReader&) = delete;
    ChangesReader& operator=(const ChangesReader&) = delete;

    bool next() {
        const int result = sqlite3changeset_next(changes_);
        if (result == SQLITE_ROW) return true;
        succeed_anyhow(result == SQLITE_DONE ? SQLITE_OK : result);
        return false;
    }

    RowChange row() const {
        const char* table = nullptr;
        int columns = 0, kind = 0, indirect = 0;
        succeed_anyhow(sqlite3changeset_op(changes_, &table, &columns, &kind, &indirect));
        unsigned char* key = nullptr;
        succeed_anyhow(sqlite3changeset_pk(changes_, &key, &columns));
        RowChange change{table, std::vector<bool>(key, key + columns), {}, {}};
        if (kind != SQLITE_INSERT) change.before = side(columns, sqlite3changeset_old);
        if (kind != SQLITE_DELETE) change.after = side(columns, sqlite3changeset_new);
        if (kind == SQLITE_UPDATE) tell_row_again(change);
        return change;
    }

  private:
    Row side(int columns, int (*read)(sqlite3_changeset_iter*, int, sqlite3_value**)) const {
        Row row;
        for (int column = 0; column < columns; ++column) {
            sqlite3_value* value = nullptr;
            succeed_anyhow(read(changes_, column, &value));
            row.push_back(kept(value));
        }
        return row;
    }

    // Of a row that was changed, SQLite tells the key once.
    static void tell_row_again(RowChange& change) {
        for (std::size_t column = 0; column < change.key.size(); ++column) {
            if (change.key[column]) change.after[column] = change.before[column];
        }
    }

    sqlite3_changeset_iter* changes_ = nullptr;
};

}  // namespace

std::int64_t whole_number(const Value& value) {
    return value ? sqlite3_value_int64(value.get()) : 0;
}

std::string text_of(const Value& value) {
    const auto* text =
        value ? reinterpret_cast<const char*>(sqlite3_value_text(value.get())) : nullptr;
    return text ? text : "";
}

RowChange backwards(RowChange change) {
    std::swap(change.before, change.after);
    return change;
}

std::vector<RowChange> rows_in(const Changeset& changes) {
    return in_words([&] {
        std::vector<RowChange> rows;
        if (changes.empty()) return rows;
        for (ChangesReader reader(changes); reader.next();) rows.push_back(reader.row());
        return rows;
    });
}

RowRecorder::RowRecorder(Database& database, std::function<bool(std::string_view)> wanted)
    : database_(database), wanted_(std::move(wanted)) {
    in_words([&] {
        sqlite3* handle = database_.handle().getHandle();
        succeed(handle, sqlite3session_create(handle, "main", &session_));
        sqlite3session_table_filter(
            session_,
            [](void* recorder, const char* table) {
                return static_cast<RowRecorder*>(recorder)->wanted_(table) ? 1 : 0;
            },
            this);
        succeed(handle, sqlite3session_attach(session_, nullptr));
    });
}

RowRecorder::~RowRecorder() {
    sqlite3session_delete(session_);
}

Changeset RowRecorder::taken_down() {
    return in_words([&] {
        int bytes = 0;
        void* changes = nullptr;
        succeed(database_.handle().getHandle(),
                sqlite3session_changeset(session_, &bytes, &changes));
        const std::unique_ptr<void, void (*)(void*)> freed(changes, sqlite3_free);
        return Changeset(static_cast<const char*>(changes), static_cast<std::size_t>(bytes));
    });
}

struct RowStatement::Prepared {
    ~Prepared() { sqlite3_finalize(statement); }

    sqlite3* database = nullptr;
    sqlite3_stmt* statement = nullptr;
};

RowStatement::RowStatement(Database& database, const std::string& sql, const Row& values)
    : prepared_(std::make_unique<Prepared>()) {
    in_words([&] {
        prepared_->database = database.handle().getHandle();
        succeed(prepared_->database, sqlite3_prepare_v2(prepared_->database, sql.c_str(), -1,
                                                        &prepared_->statement, nullptr));
        int place = 0;
        for (const Value& value : values) {
            ++place;
            if (value) {
                succeed(prepared_->database,
                        sqlite3_bind_value(prepared_->statement, place, value.get()));
            }
        }
    });
}

RowStatement::~RowStatement() = default;

bool RowStatement::step() {
    const int result = sqlite3_step(prepared_->statement);
    if (result == SQLITE_ROW) return true;
    if (result != SQLITE_DONE) throw SQLite::Exception(prepared_->database, result);
    return false;
}

Row RowStatement::row() const {
    Row row;
    const int columns = sqlite3_column_count(prepared_->statement);
    for (int column = 0; column < columns; ++column) {
        row.push_back(kept(sqlite3_column_value(prepared_->statement, column)));
    }
    return row;
}

}  // namespace quarterturn
