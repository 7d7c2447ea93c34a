#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration pair_windows{R"sql(
-- Where the head stands in a pair that is laid, in heights of the first picture: with the alignment
-- it says how the pair is shown before its photos are looked at again. It goes with the alignment.
CREATE TABLE pair_window (
    pair INTEGER PRIMARY KEY REFERENCES pair_alignment ON DELETE CASCADE,
    first_aspect REAL NOT NULL,
    second_aspect REAL NOT NULL,
    top_x REAL NOT NULL,
    top_y REAL NOT NULL,
    bottom_x REAL NOT NULL,
    bottom_y REAL NOT NULL,
    hair_left REAL NOT NULL,
    hair_right REAL NOT NULL
) STRICT;
)sql"};

}  // namespace quarterturn
