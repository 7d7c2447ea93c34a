#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration large_libraries{R"sql(
-- What ends soon, without reading all that was ever said.
CREATE INDEX consent_until ON consent (valid_until) WHERE valid_until IS NOT NULL;
CREATE INDEX photo_credit_until ON photo_credit (valid_until) WHERE valid_until IS NOT NULL;

-- All photos, the newest first, and what words find them by, without reading the photos themselves.
DROP INDEX photo_newest;
CREATE INDEX photo_newest ON photo (moment, id, sitting, binned, look);
)sql"};

}  // namespace quarterturn
