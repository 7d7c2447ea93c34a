#pragma once
// The index of words that the search asks (migrations/search_words.cpp). Whoever writes a record
// with words in it says so here, in the same transaction.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/store/photo_search.h"
#include "indexer/store/statement.h"

namespace quarterturn {

// Brings the index to what the record says now; a record that is gone is found no more.
// A recipe goes by the number of its look.
void index_words(Database& database, WordsOf kind, std::int64_t record);

template <class Row>
void index_words(Database& database, WordsOf kind, Id<Row> record) {
    index_words(database, kind, record.value);
}

// A row of the index.
std::int64_t words_row(WordsOf kind, std::int64_t record);
WordsOf kind_of_row(std::int64_t row);
std::int64_t record_of_row(std::int64_t row);

// How one of her words is looked for, whatever signs it is made of.
struct WordQuery {
    std::string condition;  // SQL: true for the rows of `words` with the word; ?1 is its value
    std::string value;
    bool by_index;  // FTS5 finds it; otherwise the texts are read through
};

// One for each word between white space. A word is found at the beginning of a word, without
// regard to case and accents; where a script sets no spaces between words (line breaking classes
// ID, CJ and SA of Unicode's UAX #14), and for signs that are no letters or digits, anywhere.
std::vector<WordQuery> word_queries(std::string_view words);

// The same word, looked for in these rows alone.
WordQuery among(Database& database, WordQuery query, const std::vector<std::int64_t>& rows);

}  // namespace quarterturn
