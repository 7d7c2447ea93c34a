#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration places_of_photos{R"sql(
-- The photos of many sittings, or of many looks, without reading the photos themselves.
DROP INDEX photo_sitting;
CREATE INDEX photo_sitting ON photo (sitting, moment IS NULL, moment, look);
DROP INDEX photo_look;
CREATE INDEX photo_look ON photo (look, sitting) WHERE look IS NOT NULL;
)sql"};

}  // namespace quarterturn
