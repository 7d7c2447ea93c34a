#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration undo_journal{R"sql(
-- What an action changed in her records: rows in the form of SQLite's session extension, kept from
-- done_at, in seconds since 1970 in UTC.
CREATE TABLE records_change (
    action INTEGER PRIMARY KEY REFERENCES action ON DELETE CASCADE,
    done_at INTEGER NOT NULL,
    changes BLOB NOT NULL
) STRICT;

-- What she chose of the pair at a place. No references: a look that was taken back comes again.
CREATE TABLE choice_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    look INTEGER NOT NULL,
    kind TEXT NOT NULL,
    number INTEGER NOT NULL,
    angle TEXT NOT NULL,
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (action, look, kind, number, angle)
) STRICT, WITHOUT ROWID;
)sql"};

}  // namespace quarterturn
