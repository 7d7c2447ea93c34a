#pragma once
// One photo is worked on by one thread, and there are as many threads as the machine runs at once.

#include <malloc.h>

#include <algorithm>
#include <thread>

#include "indexer/image/one_thread_each.h"

namespace quarterturn {

inline unsigned worker_count() {
    return std::max(1U, std::thread::hardware_concurrency());
}

// While one of these lives, blocks of a photo's size are kept for the next photo when they are
// freed. Handed back to the system each time, they took half as long again as all the rest of an
// import (see tests/bench).
class KeptMemory {
  public:
    KeptMemory() {
        ::mallopt(M_MMAP_THRESHOLD, 32 << 20);
        ::mallopt(M_TRIM_THRESHOLD, 512 << 20);
    }
    ~KeptMemory() {
        ::mallopt(M_TRIM_THRESHOLD, 64 << 20);
        ::malloc_trim(0);
    }
    KeptMemory(const KeptMemory&) = delete;
    KeptMemory& operator=(const KeptMemory&) = delete;
};

}  // namespace quarterturn
