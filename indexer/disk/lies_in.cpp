#include "indexer/disk/lies_in.h"

#include <algorithm>

namespace quarterturn {
namespace {

// Without a slash at its end.
Path whole(const Path& path) {
    const Path canonical = std::filesystem::weakly_canonical(std::filesystem::absolute(path));
    return canonical.has_filename() ? canonical : canonical.parent_path();
}

}  // namespace

bool lies_in(const Path& file, const Path& folder) {
    const Path above = whole(folder);
    const Path below = whole(file);
    return std::ranges::mismatch(above, below).in1 == above.end();
}

}  // namespace quarterturn
