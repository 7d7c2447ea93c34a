#pragma once
// Only one program at a time moves files within a library, and none while they are backed up. The
// system gives the lock back when the program ends, however it ends.

#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* photos_are_being_moved =
    "Photos of this library are being brought in, moved or backed up by another window or command: "
    "wait until that is done, and try again.";

class MoveLock {
  public:
    explicit MoveLock(Library& library);
    ~MoveLock();
    MoveLock(const MoveLock&) = delete;
    MoveLock& operator=(const MoveLock&) = delete;

    // False while another holds it. Disks that know no locks are taken to be hers alone.
    bool held() const { return held_; }

  private:
    int folder_;
    bool held_;
};

}  // namespace quarterturn
