#include "indexer/store/statement.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <limits>

#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

constexpr std::string_view flaw_separator = ", ";

// Or carries changes over into their file, or takes a copy that others are to rely on.
bool changes_records(std::string_view sql) {
    constexpr std::array changing{"INSERT", "UPDATE", "DELETE", "VACUUM", "PRAGMA wal_checkpoint"};
    return std::ranges::any_of(changing, [&](const char* word) { return sql.starts_with(word); });
}

}  // namespace

Statement::Statement(Database& database, const std::string& sql)
    : statement_(
          in_words([&] { return std::make_unique<SQLite::Statement>(database.handle(), sql); },
                   database.handle().getHandle())),
      connection_(database.handle().getHandle()) {
    // A transaction has asked when it began.
    const bool alone = sqlite3_get_autocommit(database.handle().getHandle()) != 0;
    if (!alone || !changes_records(sql)) return;
    database.refuse_if_replaced();
    changed_alone_ = &database;
}

Statement::~Statement() {
    statement_.reset();
    if (changed_alone_) changed_alone_->look_again();
}

bool Statement::step() {
    return in_words([&] { return statement_->executeStep(); }, connection_);
}

void Statement::run() {
    while (step()) {
    }
}

void Statement::reset() {
    in_words([&] {
        statement_->reset();
        statement_->clearBindings();
    });
}

bool Statement::is_null(int column) const {
    return in_words([&] { return statement_->isColumnNull(column); });
}

void Statement::put(int place, std::int64_t value) {
    in_words([&] { statement_->bind(place, value); });
}

void Statement::put(int place, double value) {
    in_words([&] { statement_->bind(place, value); });
}

void Statement::put(int place, std::string_view value) {
    in_words([&] { statement_->bind(place, std::string(value)); });
}

void Statement::put(int place, std::nullopt_t) {
    in_words([&] { statement_->bind(place); });
}

void Statement::put(int place, Date value) {
    put(place, iso_text(value));
}

void Statement::put(int place, const std::vector<Flaw>& flaws) {
    std::string words;
    for (const Flaw flaw : flaws) {
        if (!words.empty()) words += flaw_separator;
        words += word(flaw);
    }
    put(place, words);
}

void Statement::take(int column, std::int64_t& value) const {
    value = in_words([&] { return statement_->getColumn(column).getInt64(); });
}

void Statement::take(int column, double& value) const {
    value = in_words([&] { return statement_->getColumn(column).getDouble(); });
}

void Statement::take(int column, std::string& value) const {
    value = in_words([&] { return statement_->getColumn(column).getString(); });
}

void Statement::take(int column, int& value) const {
    std::int64_t wide = 0;
    take(column, wide);
    if (wide < std::numeric_limits<int>::min() || wide > std::numeric_limits<int>::max()) {
        refuse_unknown(std::to_string(wide));
    }
    value = static_cast<int>(wide);
}

void Statement::take(int column, bool& value) const {
    std::int64_t number = 0;
    take(column, number);
    value = number != 0;
}

void Statement::take(int column, LocalTime& value) const {
    std::int64_t nanoseconds = 0;
    take(column, nanoseconds);
    value = LocalTime{std::chrono::nanoseconds{nanoseconds}};
}

void Statement::take(int column, Date& value) const {
    take_word(column, value, parse_date);
}

void Statement::take(int column, std::vector<Flaw>& flaws) const {
    std::string words;
    take(column, words);
    flaws.clear();
    for (std::size_t from = 0; from < words.size();) {
        const std::size_t to = std::min(words.find(flaw_separator, from), words.size());
        const std::string text = words.substr(from, to - from);
        flaws.push_back(known(parse_flaw(text), text));
        from = to + flaw_separator.size();
    }
}

void Statement::refuse_unknown(const std::string& text) {
    throw StoreError("The library's records hold '" + text +
                     "', which this version does not know: install the newest version.");
}

std::string json_list(std::span<const std::int64_t> numbers) {
    std::string list;
    for (const std::int64_t number : numbers) {
        list += (list.empty() ? "" : ",") + std::to_string(number);
    }
    return '[' + list + ']';
}

std::int64_t last_inserted(Database& database) {
    return database.handle().getLastInsertRowid();
}

void refuse_unless_changed(Database& database, const std::string& what) {
    if (database.handle().getChanges() == 0) {
        throw StoreError("There is no " + what + " in the library.");
    }
}

}  // namespace quarterturn
