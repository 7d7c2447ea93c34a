#include "indexer/intake/set_aside.h"

#include "indexer/intake/file_names.h"

namespace quarterturn {

Path set_aside(FileSystem& disk, const Path& changed) {
    for (int number = 1;; ++number) {
        const Path aside =
            changed.parent_path() / changed_name(changed.filename().native(), number);
        if (disk.exists(aside)) continue;
        disk.rename_new(changed, aside);
        return aside;
    }
}

}  // namespace quarterturn
