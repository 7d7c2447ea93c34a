#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration wedding_day_sittings{R"sql(
-- Which sittings are of the day of their wedding, without reading the sittings themselves.
CREATE INDEX sitting_of_wedding_day ON sitting (wedding, starts) WHERE kind = 'wedding day';
)sql"};

}  // namespace quarterturn
