#include "ui/shell/lock_work.h"

namespace quarterturn {

LockWishes lock_wishes(Job& job) {
    return {[&job](std::int64_t done, std::int64_t total) {
                job.progress({done, total, {}, {}});
            },
            job.stop_token()};
}

}  // namespace quarterturn
