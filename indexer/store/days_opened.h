#pragma once
// On which days the library was opened last, by a clock that may be wrong. The day before the last
// of them is sure; after a leap ahead of more than a month the one before the leap, until the
// library was opened on more than seven days since.

#include <optional>

#include "indexer/record/time.h"
#include "indexer/store/database.h"

namespace quarterturn {

// All throw StoreError.
void note_day_opened(Database& database, Date today);
// Nothing where none was noted.
std::optional<Date> sure_day(Database& database);
// The later of the last two.
std::optional<Date> last_day_opened(Database& database);

}  // namespace quarterturn
