#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration inspirations{R"sql(
-- Somebody else's work that a client brought along. Nothing that exports reads this table.
CREATE TABLE inspiration (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client,
    name TEXT NOT NULL,
    path TEXT NOT NULL UNIQUE,
    sha256 TEXT NOT NULL,
    kept_at INTEGER NOT NULL,
    UNIQUE (client, sha256)
) STRICT;
)sql"};

}  // namespace quarterturn
