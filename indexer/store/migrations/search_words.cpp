// Words to search for. `record_words` says which words each record is found by, one field on a
// line; `words` is their index, whose rows are numbered record * 8 + kind. The index is written by
// search_words.cpp, since SQLite 3.40 lets no trigger write to it while the schema is not trusted.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration search_words{R"sql(
CREATE VIEW record_words (kind, record, text) AS
SELECT 0, id, name || char(10) || note || char(10) || accepted_because FROM photo
UNION ALL
SELECT 1, id, name || char(10) || note FROM client
UNION ALL
SELECT 2, id, name || char(10) || venue FROM wedding
UNION ALL
SELECT 3, id, kind || ' ' || strftime('%Y-%m-%d', starts / 1000000000, 'unixepoch')
              || char(10) || note FROM sitting
UNION ALL
SELECT 4, id, name FROM look
UNION ALL
SELECT 5, look, (SELECT group_concat(value, char(10)) FROM json_tree(newest.recipe)
                 WHERE type = 'text')
FROM recipe_revision AS newest
WHERE number = (SELECT max(number) FROM recipe_revision WHERE look = newest.look);

CREATE VIRTUAL TABLE words USING fts5 (
    text, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3');
INSERT INTO words (rowid, text)
SELECT record * 8 + kind, text FROM record_words WHERE text IS NOT NULL;

-- All photos, the newest first, without reading the photos themselves.
CREATE INDEX photo_newest ON photo (moment, id, sitting);
)sql"};

}  // namespace quarterturn
