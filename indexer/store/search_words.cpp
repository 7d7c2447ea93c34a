#include "indexer/store/search_words.h"

#include <unicode/uchar.h>
#include <unicode/utf8.h>

#include <set>

#include "indexer/store/code_points.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::int64_t kinds = 8;
constexpr std::size_t most_words = 32;  // each takes a look through the index
// So many rows with a word are gone through in the time in which one row is asked for it.
constexpr std::size_t rows_to_a_question = 200;

template <class Test>
bool any_code_point(std::string_view text, Test test) {
    bool any = false;
    each_code_point(text, [&](UChar32 point) { any = any || test(point); });
    return any;
}

bool in_script_without_spaces(UChar32 point) {
    switch (u_getIntPropertyValue(point, UCHAR_LINE_BREAK)) {
        case U_LB_IDEOGRAPHIC:
        case U_LB_CONDITIONAL_JAPANESE_STARTER:
        case U_LB_COMPLEX_CONTEXT:
            return true;
        default:
            return false;
    }
}

// What FTS5's unicode61 makes words of, unless told otherwise: categories L*, N* and Co.
bool makes_words(UChar32 point) {
    return (U_GET_GC_MASK(point) & (U_GC_L_MASK | U_GC_N_MASK | U_GC_CO_MASK)) != 0;
}

// As a string of FTS5: a double quote in it is written twice.
std::string quoted(std::string_view word) {
    std::string text = "\"";
    for (const char c : word) text += c == '"' ? std::string("\"\"") : std::string(1, c);
    return text + '"';
}

WordQuery query_for(std::string_view word) {
    const bool by_index =
        any_code_point(word, makes_words) && !any_code_point(word, in_script_without_spaces);
    if (by_index) return {"words MATCH ?1", quoted(word) + '*', true};
    return {"instr(lower(text), lower(?1)) > 0", std::string(word), false};
}

bool stands_in_more_rows_than(Database& database, const WordQuery& query, std::size_t rows) {
    return Statement(database,
                     "SELECT 1 FROM words WHERE " + query.condition + " LIMIT 1 OFFSET ?2")
        .with(query.value, static_cast<std::int64_t>(rows))
        .step();
}

std::string listed(const std::vector<std::int64_t>& rows) {
    std::string list;
    for (const std::int64_t row : rows) list += (list.empty() ? "" : ",") + std::to_string(row);
    return list;
}

}  // namespace

std::int64_t words_row(WordsOf kind, std::int64_t record) {
    return record * kinds + static_cast<std::int64_t>(kind);
}

WordsOf kind_of_row(std::int64_t row) {
    return static_cast<WordsOf>(row % kinds);
}

std::int64_t record_of_row(std::int64_t row) {
    return row / kinds;
}

void index_words(Database& database, WordsOf kind, std::int64_t record) {
    const std::int64_t row = words_row(kind, record);
    const auto text = Statement(database,
                                "SELECT text FROM record_words WHERE kind = ? AND record = ? "
                                "AND text IS NOT NULL")
                          .with(static_cast<int>(kind), record)
                          .value<std::string>();
    const auto indexed = Statement(database, "SELECT text FROM words WHERE rowid = ?")
                             .with(row)
                             .value<std::string>();
    if (text == indexed) return;
    if (indexed) run(database, "DELETE FROM words WHERE rowid = ?", row);
    if (text) run(database, "INSERT INTO words (rowid, text) VALUES (?, ?)", row, *text);
}

std::vector<WordQuery> word_queries(std::string_view words) {
    refuse_unless_text("the words to look for", words);
    std::vector<WordQuery> queries;
    std::set<std::string_view> met;
    const auto add = [&](std::string_view word) {
        if (!met.insert(word).second) return;
        if (met.size() > most_words) {
            throw StoreError("At most " + std::to_string(most_words) +
                             " different words can be looked for at once: leave some out.");
        }
        queries.push_back(query_for(word));
    };
    const auto length = static_cast<std::int32_t>(words.size());
    std::int32_t begin = 0;
    for (std::int32_t at = 0; at < length;) {
        const std::int32_t end = at;
        UChar32 point = 0;
        U8_NEXT(words.data(), at, length, point);
        if (!u_isUWhiteSpace(point)) continue;
        if (end > begin) add(words.substr(begin, end - begin));
        begin = at;
    }
    if (length > begin) add(words.substr(begin));
    return queries;
}

// SQLite asks the index for each row, unless a + forbids it.
WordQuery among(Database& database, WordQuery query, const std::vector<std::int64_t>& rows) {
    const bool at_once = query.by_index && !stands_in_more_rows_than(
                                               database, query, rows.size() * rows_to_a_question);
    query.condition += (at_once ? " AND +rowid IN (" : " AND rowid IN (") + listed(rows) + ")";
    return query;
}

}  // namespace quarterturn
