#pragma once
// Files that a lock left as they were when it was taken off. Without their key, which is kept and
// would bring them back, what one of them may be is told by its size alone.

#include <optional>
#include <string>
#include <vector>

#include "indexer/store/erasure_sought.h"
#include "indexer/store/library.h"

namespace quarterturn {

class LeftLocked {
  public:
    // Finds none while the library has a lock. Throws DiskError.
    explicit LeftLocked(Library& library);

    // Removes small pictures among them, which are made again; one that the disk keeps may be any.
    void remove_small_pictures();

    // A file that may be one of so many bytes, or where no number is given, of any; else nothing.
    std::optional<Path> may_be(std::optional<std::int64_t> bytes) const;

    // Each is none of what was erased, but may be something that no record names.
    std::vector<SaidOfFile> said() const;

  private:
    struct Left {
        std::string path;                   // relative to the library's folder
        std::optional<std::int64_t> bytes;  // once it is unlocked; a folder may hold any file
    };

    std::optional<std::int64_t> bytes_unlocked(const Path& path) const;

    Library& library_;
    std::vector<Left> left_;
};

// For who is kept from something by one of them.
inline constexpr const char* unlock_or_remove =
    "Go on with qturn lock remove first; what the disk does not give any longer, remove by hand.";

}  // namespace quarterturn
