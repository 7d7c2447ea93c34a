#include "indexer/disk/folder_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>

namespace quarterturn {

FolderLock::FolderLock(const Path& folder)
    : folder_(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)),
      held_(::flock(folder_, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK) {}

FolderLock::~FolderLock() {
    if (folder_ >= 0) ::close(folder_);
}

}  // namespace quarterturn
