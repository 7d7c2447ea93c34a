#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration kit_ticks{R"sql(
-- What is packed for a wedding. `item` tells it by its words, `count` is how many there were to be
-- when she ticked it.
CREATE TABLE kit_tick (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    item TEXT NOT NULL,
    count INTEGER NOT NULL,
    PRIMARY KEY (wedding, item)
) STRICT;
)sql"};

}  // namespace quarterturn
