#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration recipe_drafts{R"sql(
-- The sitting at which a revision was written.
ALTER TABLE recipe_revision ADD COLUMN sitting INTEGER REFERENCES sitting ON DELETE SET NULL;
CREATE INDEX recipe_revision_sitting ON recipe_revision (sitting);

-- What she has written since the newest revision and not yet saved as one.
CREATE TABLE recipe_draft (
    look INTEGER PRIMARY KEY REFERENCES look ON DELETE CASCADE,
    kept_at INTEGER NOT NULL,
    recipe TEXT NOT NULL
) STRICT;

CREATE TABLE recipe_template (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL UNIQUE,
    recipe TEXT NOT NULL
) STRICT;
)sql"};

}  // namespace quarterturn
