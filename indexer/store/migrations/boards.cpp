#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration boards{R"sql(
CREATE TABLE step_tick (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    number INTEGER NOT NULL,
    words TEXT NOT NULL,
    PRIMARY KEY (wedding, look, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX step_tick_look ON step_tick (look);

-- Seconds since 1970 in UTC.
CREATE TABLE timer (
    id INTEGER PRIMARY KEY,
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    name TEXT NOT NULL,
    begins INTEGER NOT NULL,
    ends INTEGER NOT NULL
) STRICT;
CREATE INDEX timer_wedding ON timer (wedding);

-- Set by her hand, in shares of the picture upright and the right way round.
CREATE TABLE head_points (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    top_x REAL NOT NULL,
    top_y REAL NOT NULL,
    bottom_x REAL NOT NULL,
    bottom_y REAL NOT NULL
) STRICT;
)sql"};

}  // namespace quarterturn
