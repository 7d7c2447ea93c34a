#pragma once
// All that the records say, as plain text, for comparing them before and after.

#include <SQLiteCpp/SQLiteCpp.h>

#include <map>
#include <string>

#include "indexer/store/database.h"

namespace quarterturn {

using RecordsDump = std::map<std::string, std::string>;  // by table

namespace records_dump_detail {

// What was done, not what is; what says that something was done; and what SQLite keeps for itself,
// as for the index of words.
inline constexpr auto tables =
    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT IN ('action', 'tag_change', "
    "'shift_change', 'bin_change', 'records_change', 'choice_change', 'pair_change', "
    "'sqlite_sequence', 'erasure_file') AND name NOT LIKE 'words%' ORDER BY name";

inline std::string rows(SQLite::Database& database, const std::string& sql) {
    std::string text;
    SQLite::Statement statement(database, sql);
    while (statement.executeStep()) {
        for (int i = 0; i < statement.getColumnCount(); ++i) {
            const SQLite::Column column = statement.getColumn(i);
            text += (column.isNull() ? "nothing" : column.getString()) + '|';
        }
        text += '\n';
    }
    return text;
}

inline std::string columns(SQLite::Database& database, const std::string& table) {
    std::string list;
    SQLite::Statement names(database, "SELECT name FROM pragma_table_info(?) ORDER BY cid");
    names.bind(1, table);
    while (names.executeStep()) {
        const std::string name = names.getColumn(0).getString();
        // A pair that is made anew has another number.
        if (table == "pair" && name == "id") continue;
        list += (list.empty() ? "\"" : ", \"") + name + '"';
    }
    return list;
}

}  // namespace records_dump_detail

inline RecordsDump dump_of(Database& database) {
    using namespace records_dump_detail;
    SQLite::Database& handle = database.handle();
    RecordsDump dump;
    SQLite::Statement names(handle, tables);
    while (names.executeStep()) {
        const std::string table = names.getColumn(0).getString();
        const std::string list = columns(handle, table);
        dump[table] = rows(handle, "SELECT " + list + " FROM " + table + " ORDER BY " + list);
    }
    dump["words"] = rows(handle, "SELECT rowid, text FROM words ORDER BY rowid");
    return dump;
}

// What differs, table by table; empty when nothing does.
inline std::string difference(const RecordsDump& one, const RecordsDump& other) {
    std::string text;
    for (const auto& [table, rows] : one) {
        if (rows != other.at(table)) {
            text += table + ":\n" + rows + "against\n" + other.at(table);
        }
    }
    return text;
}

}  // namespace quarterturn
