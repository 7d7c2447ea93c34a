#pragma once
// One SQL statement: values are bound in the order of its question marks and columns are read in
// the order they are selected, each by its own type. Vocabulary goes in and out as its words, times
// as nanoseconds, an empty optional as NULL. All functions throw StoreError.

#include <chrono>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "indexer/record/credit.h"
#include "indexer/record/id.h"
#include "indexer/record/pair.h"
#include "indexer/record/time.h"
#include "indexer/record/words.h"
#include "indexer/store/database.h"

struct sqlite3;

namespace SQLite {
class Statement;
}

namespace quarterturn {

class Statement {
  public:
    Statement(Database& database, const std::string& sql);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    // Starts over with new values. Texts must outlive the steps that follow.
    template <class... Values>
    Statement& with(const Values&... values) {
        reset();
        int place = 0;
        (put(++place, values), ...);
        return *this;
    }

    bool step();  // false when there is no further row
    void run();   // steps to the end

    template <class... Fields>
    void read(Fields&... fields) const {
        int column = 0;
        (take(column++, fields), ...);
    }

    // The first column of the first row.
    template <class Value>
    std::optional<Value> value() {
        if (!step()) return std::nullopt;
        Value result{};
        read(result);
        return result;
    }

    // The first row as `reader(statement)` reads it.
    template <class Reader>
    auto first(Reader reader) -> std::optional<std::invoke_result_t<Reader, const Statement&>> {
        if (!step()) return std::nullopt;
        return reader(std::as_const(*this));
    }

    // Each row as `reader(statement)` reads it.
    template <class Reader>
    auto rows(Reader reader) {
        std::vector<std::invoke_result_t<Reader, const Statement&>> result;
        while (step()) result.push_back(reader(std::as_const(*this)));
        return result;
    }

  private:
    void reset();
    bool is_null(int column) const;

    void put(int place, std::int64_t value);
    void put(int place, double value);
    void put(int place, std::string_view value);
    void put(int place, std::nullopt_t);
    void put(int place, int value) { put(place, std::int64_t{value}); }
    void put(int place, bool value) { put(place, std::int64_t{value ? 1 : 0}); }
    void put(int place, const std::string& value) { put(place, std::string_view(value)); }
    void put(int place, const char* value) { put(place, std::string_view(value)); }
    void put(int place, LocalTime value) {
        put(place, std::int64_t{value.time_since_epoch().count()});
    }
    void put(int place, Date value);
    void put(int place, const std::vector<Flaw>& flaws);  // "moved, too dark"
    template <class Rep, class Period>
    void put(int place, std::chrono::duration<Rep, Period> value) {
        put(place, std::int64_t{value.count()});
    }
    template <class Row>
    void put(int place, Id<Row> value) {
        put(place, value.value);
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void put(int place, Word value) { put(place, word(value)); }
    template <class Value>
    void put(int place, const std::optional<Value>& value) {
        if (value) {
            put(place, *value);
        } else {
            put(place, std::nullopt);
        }
    }

    void take(int column, std::int64_t& value) const;
    void take(int column, double& value) const;
    void take(int column, std::string& value) const;
    void take(int column, int& value) const;
    void take(int column, bool& value) const;
    void take(int column, LocalTime& value) const;
    void take(int column, Date& value) const;
    void take(int column, std::vector<Flaw>& flaws) const;
    void take(int column, Angle& value) const { take_word(column, value, parse_angle); }
    void take(int column, Stage& value) const { take_word(column, value, parse_stage); }
    void take(int column, SittingKind& value) const {
        take_word(column, value, parse_sitting_kind);
    }
    void take(int column, Worn& value) const { take_word(column, value, parse_worn); }
    void take(int column, Need& value) const { take_word(column, value, parse_need); }
    void take(int column, Fact& value) const { take_word(column, value, parse_fact); }
    void take(int column, PairKind& value) const { take_word(column, value, parse_pair_kind); }
    void take(int column, SideNote& value) const { take_word(column, value, parse_side_note); }
    void take(int column, Use& value) const { take_word(column, value, parse_use); }
    void take(int column, ConsentSaid& value) const {
        take_word(column, value, parse_consent_said);
    }
    void take(int column, ShownAs& value) const { take_word(column, value, parse_shown_as); }
    void take(int column, HowGiven& value) const { take_word(column, value, parse_how_given); }
    void take(int column, ConsentGiver& value) const {
        take_word(column, value, parse_consent_giver);
    }
    void take(int column, AgeBand& value) const { take_word(column, value, parse_age_band); }
    void take(int column, Whose& value) const { take_word(column, value, parse_whose); }
    template <class Rep, class Period>
    void take(int column, std::chrono::duration<Rep, Period>& value) const {
        std::int64_t count = 0;
        take(column, count);
        value = std::chrono::duration<Rep, Period>{static_cast<Rep>(count)};
    }
    template <class Row>
    void take(int column, Id<Row>& value) const {
        take(column, value.value);
    }
    template <class Value>
    void take(int column, std::optional<Value>& value) const {
        value.reset();
        if (!is_null(column)) take(column, value.emplace());
    }
    template <class Word, class Parse>
    void take_word(int column, Word& value, Parse parse) const {
        std::string text;
        take(column, text);
        value = known(parse(text), text);
    }
    template <class Value>
    static Value known(std::optional<Value> value, const std::string& text) {
        if (!value) refuse_unknown(text);
        return *value;
    }
    [[noreturn]] static void refuse_unknown(const std::string& text);

    Database* changed_alone_ = nullptr;  // what it changes outside of any transaction
    std::unique_ptr<SQLite::Statement> statement_;
    sqlite3* connection_;
};

std::int64_t last_inserted(Database& database);
// Throws when the last statement changed no row: "There is no client 7 in the library."
void refuse_unless_changed(Database& database, const std::string& what);

// "[3,1,4]", for SQL's json_each().
std::string json_list(std::span<const std::int64_t> numbers);
template <class Row>
std::string json_list(std::span<const Id<Row>> ids) {
    std::vector<std::int64_t> numbers;
    for (const Id<Row> id : ids) numbers.push_back(id.value);
    return json_list(numbers);
}

// For records that are made of several rows each.
template <class Record>
std::optional<Record> first_of(std::vector<Record> records) {
    if (records.empty()) return std::nullopt;
    return std::move(records.front());
}

// Runs a statement that answers nothing.
template <class... Values>
void run(Database& database, const std::string& sql, const Values&... values) {
    Statement(database, sql).with(values...).run();
}

// Runs an INSERT and answers the new row's number.
template <class RowId, class... Values>
RowId insert(Database& database, const std::string& sql, const Values&... values) {
    run(database, sql, values...);
    return RowId{last_inserted(database)};
}

// Runs an UPDATE of one row, and throws when there was none: `what` as in "client 7".
template <class... Values>
void update_one(Database& database, const std::string& what, const std::string& sql,
                const Values&... values) {
    run(database, sql, values...);
    refuse_unless_changed(database, what);
}

}  // namespace quarterturn
