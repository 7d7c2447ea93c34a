#include "indexer/store/apply_changes.h"

#include <sqlite3.h>

#include <algorithm>
#include <map>
#include <ranges>

#include "indexer/store/draft_changes.h"
#include "indexer/store/journal_tables.h"
#include "indexer/store/search_words.h"
#include "indexer/store/statement.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

using Columns = std::vector<std::string>;

const Row& row_of(const RowChange& change) {
    return change.comes() ? change.after : change.before;
}

// Columns whose values are told, and those values, in the same order.
struct Told {
    Columns columns;
    Row values;

    std::string list(const std::string& each, const std::string& between) const {
        std::string sql;
        for (const std::string& column : columns) {
            sql += (sql.empty() ? "" : between) + '"' + column + '"' + each;
        }
        return sql;
    }
};

class RowWriter {
  public:
    explicit RowWriter(Database& database) : database_(database) {}

    bool is_there(const RowChange& change, const Row& row, bool by_key_alone = false) {
        const Told told = told_of(change, row, by_key_alone);
        RowStatement found(
            database_, "SELECT 1 FROM " + change.table + " WHERE " + told.list(" IS ?", " AND "),
            told.values);
        return found.step();
    }

    // The row as it is, with all its values.
    Row whole(const RowChange& change) {
        const Told key = told_of(change, row_of(change), true);
        RowStatement found(database_,
                           "SELECT * FROM " + change.table + " WHERE " + key.list(" IS ?", " AND "),
                           key.values);
        if (!found.step()) throw it_was_changed_since();
        return found.row();
    }

    void remove(const RowChange& change) {
        const Told key = told_of(change, change.before, true);
        run("DELETE FROM " + change.table + " WHERE " + key.list(" IS ?", " AND "), key.values);
    }

    void add(const RowChange& change) {
        const Told told = told_of(change, change.after, false);
        std::string places;
        for (std::size_t i = 0; i < told.values.size(); ++i) places += i == 0 ? "?" : ", ?";
        run("INSERT INTO " + change.table + " (" + told.list("", ", ") + ") VALUES (" + places +
                ")",
            told.values);
    }

    void change(const RowChange& change) {
        Told told = told_of(change, change.after, false);
        const Told key = told_of(change, change.before, true);
        const std::string sql = "UPDATE " + change.table + " SET " + told.list(" = ?", ", ") +
                                " WHERE " + key.list(" IS ?", " AND ");
        told.values.insert(told.values.end(), key.values.begin(), key.values.end());
        run(sql, told.values);
    }

    Value value(const RowChange& change, std::string_view column) {
        const Columns& names = columns_of(change.table);
        const auto found = std::ranges::find(names, column);
        return row_of(change)[static_cast<std::size_t>(found - names.begin())];
    }

  private:
    void run(const std::string& sql, const Row& values) {
        RowStatement statement(database_, sql, values);
        while (statement.step()) {
        }
    }

    Told told_of(const RowChange& change, const Row& row, bool key_alone) {
        const Columns& names = columns_of(change.table);
        if (row.size() > names.size()) throw it_was_changed_since();
        Told told;
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (!row[i] || (key_alone && !change.key[i])) continue;
            told.columns.push_back(names[i]);
            told.values.push_back(row[i]);
        }
        return told;
    }

    const Columns& columns_of(const std::string& table) {
        Columns& names = columns_[table];
        if (names.empty()) {
            names = Statement(database_, "SELECT name FROM pragma_table_info(?) ORDER BY cid")
                        .with(table)
                        .rows([](const Statement& row) {
                            std::string name;
                            row.read(name);
                            return name;
                        });
        }
        return names;
    }

    Database& database_;
    std::map<std::string, Columns> columns_;
};

class Applier {
  public:
    Applier(Database& database, const std::vector<RowChange>& changes)
        : database_(database), rows_(database), drafts_(database) {
        for (const RowChange& change : changes) take(change);
        std::ranges::stable_sort(changes_, {}, place_of);
    }

    void apply() {
        refuse_sealed_recipes();
        let_photos_go();
        RowRecorder watch(database_, [](std::string_view table) { return !is_made_anew(table); });
        write();
        refuse_unless_alone(watch.taken_down());
        for (const RowChange& change : changes_) index(change);
        drafts_.write();
        refuse_broken_references(database_);
    }

  private:
    static std::size_t place_of(const RowChange& change) { return *journal_place(change.table); }
    static bool has_others(const RowChange& change) {
        return journal_tables[place_of(change)].has_others;
    }
    static bool is_client(const RowChange& change) { return change.table == "client"; }

    void take(const RowChange& change) {
        if (!journal_place(change.table)) throw it_was_changed_since();
        if (is_made_anew(change)) return;
        if (as_it_was(change)) return changes_.push_back(change);
        if (change.table != "recipe_draft") throw it_was_changed_since();
        drafts_.add(change);
    }

    bool as_it_was(const RowChange& change) {
        if (change.comes()) return !rows_.is_there(change, change.after, true);
        return rows_.is_there(change, change.before);
    }

    void refuse_sealed_recipes() {
        for (const RowChange& change : changes_) {
            if (change.table != "recipe_revision" || !change.goes()) continue;
            const std::int64_t look = whole_number(rows_.value(change, "look"));
            if (any("SELECT 1 FROM recipe_revision WHERE look = ? AND number > ?", look,
                    whole_number(rows_.value(change, "number")))) {
                throw it_was_changed_since();
            }
            if (any("SELECT 1 FROM sign_off WHERE look = ? AND reopened_at IS NULL", look)) {
                throw NotApplied("The look is signed off with this recipe: open it again first.",
                                 false);
            }
        }
    }

    // Where a photo lies by its time follows from the sittings.
    void let_photos_go() {
        for (const RowChange& change : changes_) {
            if (change.table != "sitting" || !change.goes()) continue;
            run(database_,
                "UPDATE photo SET sitting = NULL WHERE sitting = ? AND NOT placed_by_hand",
                whole_number(rows_.value(change, "id")));
        }
    }

    // Rows that only stand in a list may swap what is there once, so all go before any comes. A row
    // that others hang on is changed in its place, and a client goes last: no sitting and no look
    // is ever without one.
    void write() {
        hold_references(database_);
        make_whole();
        for (const RowChange& change : std::views::reverse(changes_)) {
            if (!change.comes() && !is_client(change) && (change.goes() || !has_others(change))) {
                rows_.remove(change);
            }
        }
        for (const RowChange& change : changes_) {
            if (!change.comes() && !change.goes() && has_others(change)) rows_.change(change);
        }
        for (const RowChange& change : changes_) {
            if (!change.goes() && (change.comes() || !has_others(change))) rows_.add(change);
        }
        for (const RowChange& change : changes_) {
            if (change.goes() && is_client(change)) rows_.remove(change);
        }
    }

    void make_whole() {
        for (RowChange& change : changes_) {
            if (change.comes() || change.goes() || has_others(change)) continue;
            Row after = rows_.whole(change);
            for (std::size_t i = 0; i < change.after.size(); ++i) {
                if (change.after[i]) after[i] = change.after[i];
            }
            change.after = std::move(after);
        }
    }

    // More rows have changed than were to: others went with them.
    void refuse_unless_alone(const Changeset& changed) {
        std::vector<RowChange> rows = rows_in(changed);
        std::erase_if(rows, [](const RowChange& change) { return is_made_anew(change); });
        if (rows.size() > changes_.size()) {
            throw NotApplied("Other records belong to it by now: take those back first.", false);
        }
    }

    void index(const RowChange& change) {
        static constexpr std::array kinds{
            std::pair{"client", WordsOf::client}, std::pair{"wedding", WordsOf::wedding},
            std::pair{"sitting", WordsOf::sitting}, std::pair{"look", WordsOf::look},
            std::pair{"recipe_revision", WordsOf::recipe}};
        for (const auto& [table, kind] : kinds) {
            if (change.table != table) continue;
            const char* number = kind == WordsOf::recipe ? "look" : "id";
            index_words(database_, kind, whole_number(rows_.value(change, number)));
        }
    }

    template <class... Values>
    bool any(const std::string& sql, const Values&... values) {
        return Statement(database_, sql).with(values...).step();
    }

    Database& database_;
    RowWriter rows_;
    DraftChanges drafts_;
    std::vector<RowChange> changes_;
};

}  // namespace

NotApplied it_was_changed_since() {
    return {"It was changed again since, and was left as it is.", true};
}

void hold_references(Database& database) {
    run(database, "PRAGMA defer_foreign_keys = ON");
}

void refuse_broken_references(Database& database) {
    int broken = 0, highest = 0;
    sqlite3_db_status(database.handle().getHandle(), SQLITE_DBSTATUS_DEFERRED_FKS, &broken,
                      &highest, 0);
    if (broken > 0) throw it_was_changed_since();
}

void apply_changes(Database& database, const std::vector<RowChange>& changes) {
    in_words([&] {
        try {
            Applier(database, changes).apply();
        } catch (const SQLite::Exception& error) {
            constexpr int primary = 0xFF;
            if ((error.getErrorCode() & primary) == SQLITE_CONSTRAINT) throw it_was_changed_since();
            throw;
        }
    });
}

}  // namespace quarterturn
