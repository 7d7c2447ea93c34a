#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration plain_words{R"sql(
-- The index of words anew (search_words.cpp): without the accents of any script (word_letters.h), and
-- for words of which one letter is typed, too, since FTS5 puts together all words that begin so
-- before it answers the first row.
CREATE VIRTUAL TABLE words_anew USING fts5 (
    text, tokenize = "plain_letters", prefix = '1 2 3');
INSERT INTO words_anew (rowid, text) SELECT rowid, text FROM words;
DROP TABLE words;
ALTER TABLE words_anew RENAME TO words;
)sql"};

}  // namespace quarterturn
