#include "indexer/lock/key_ring.h"

#include <algorithm>
#include <map>
#include <mutex>

namespace quarterturn::key_ring {
namespace {

struct Ring {
    std::mutex busy;
    std::map<Path, KeysInHand> keys;
};

Ring& ring() {
    static Ring of_process;
    return of_process;
}

// However it is written, and whatever links lead there.
Path one_name(const Path& path) {
    const Path known = std::filesystem::weakly_canonical(std::filesystem::absolute(path));
    return known.has_filename() ? known : known.parent_path();
}

}  // namespace

void add(const Path& folder, KeysInHand keys) {
    const std::scoped_lock lock(ring().busy);
    ring().keys[one_name(folder)] = std::move(keys);
}

void forget(const Path& folder) {
    const std::scoped_lock lock(ring().busy);
    ring().keys.erase(one_name(folder));
}

KeysInHand of_file(const Path& file) {
    const Path known = one_name(file);
    const std::scoped_lock lock(ring().busy);
    for (Path folder = known; folder.has_relative_path(); folder = folder.parent_path()) {
        const auto found = ring().keys.find(folder);
        if (found != ring().keys.end()) return found->second;
    }
    return nullptr;
}

KeysInHand with_mark(const std::string& mark) {
    const std::scoped_lock lock(ring().busy);
    for (const auto& [folder, keys] : ring().keys) {
        if (keys->mark() == mark) return keys;
    }
    return nullptr;
}

}  // namespace quarterturn::key_ring
