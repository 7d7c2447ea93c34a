#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration found_heads{R"sql(
-- Where a version of the program's search found the head in a photo, in shares of the upright
-- picture; without numbers where it found none.
CREATE TABLE found_head (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    version INTEGER NOT NULL,
    x REAL,
    y REAL,
    width REAL,
    height REAL
) STRICT;
)sql"};

}  // namespace quarterturn
