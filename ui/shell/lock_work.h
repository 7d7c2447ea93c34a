#pragma once

#include "indexer/store/lock_library.h"
#include "ui/shell/job.h"

namespace quarterturn {

// How locking tells of itself as a job, and is stopped.
LockWishes lock_wishes(Job& job);

}  // namespace quarterturn
