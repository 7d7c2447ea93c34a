#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration erasures_left{R"sql(
-- What an erasure left to be looked at, a sentence each. One about a file, named from the library's
-- folder, stays until that is gone; another until it was told.
CREATE TABLE erasure_left (
  id INTEGER PRIMARY KEY,
  erasure INTEGER NOT NULL REFERENCES erasure (id) ON DELETE CASCADE,
  file TEXT,
  words TEXT NOT NULL,
  told INTEGER NOT NULL DEFAULT 0 CHECK (told IN (0, 1))
) STRICT;
CREATE INDEX erasure_left_by_erasure ON erasure_left (erasure);
)sql"};

}  // namespace quarterturn
