#include "indexer/intake/move_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>

namespace quarterturn {

MoveLock::MoveLock(Library& library)
    : folder_(::open(library.folder().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)),
      held_(::flock(folder_, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK) {}

MoveLock::~MoveLock() {
    if (folder_ >= 0) ::close(folder_);
}

}  // namespace quarterturn
