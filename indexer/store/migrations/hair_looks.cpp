#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration hair_looks{R"sql(
-- What was measured on a photo, by a version of the program's measure, of the picture as shown.
-- Shares in hexadecimal, two digits each; empty where no head was found.
CREATE TABLE hair_look (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    version INTEGER NOT NULL,
    mirrored INTEGER NOT NULL,
    colour TEXT NOT NULL,
    texture TEXT NOT NULL,
    shape TEXT NOT NULL
) STRICT;
)sql"};

}  // namespace quarterturn
