#pragma once

#include "indexer/intake/import.h"
#include "ui/shell/job.h"

namespace quarterturn {

// For work of the indexer that tells how far it is: the job passes it on to the window. `job` must
// outlive the answer.
std::function<void(const ImportProgress&)> progress_to(Job& job);

}  // namespace quarterturn
