#pragma once

#include "indexer/store/lock_library.h"
#include "ui/shell/job.h"

namespace quarterturn {

// How locking tells of itself as a job, and is stopped.
LockWishes lock_wishes(Job& job);

// What to say after it: `done`, unless it was stopped, and what was found on the way.
QString said_of(const LockReport& report, const QString& done);

}  // namespace quarterturn
