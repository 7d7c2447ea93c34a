#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration sought_after{R"sql(
-- What the library is to be searched for when the files of an erasure are gone (erasure_sought.h),
-- as JSON; nothing any more once it was searched.
ALTER TABLE erasure ADD COLUMN sought TEXT;
)sql"};

}  // namespace quarterturn
