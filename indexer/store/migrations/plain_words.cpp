#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration plain_words{R"sql(
-- The index of words anew (search_words.cpp): without the accents of any script (word_letters.h), and
-- for words of which one letter is typed, too, since FTS5 puts together all words that begin so
-- before it answers the first row.
DROP TABLE words;
CREATE VIRTUAL TABLE words USING fts5 (text, tokenize = "plain_letters", prefix = '1 2 3');
INSERT INTO words (rowid, text)
SELECT record * 8 + kind, text FROM record_words WHERE text IS NOT NULL;
)sql"};

}  // namespace quarterturn
