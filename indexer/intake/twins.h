#pragma once
// Which files may hold the same bytes as others or as photos of the library: first by how many
// bytes they have, then by those at their front, so that few have to be read whole.

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <unordered_map>
#include <utility>
#include <vector>

#include "indexer/intake/walk.h"
#include "indexer/store/library.h"

namespace quarterturn {

class PossibleTwins {
  public:
    // `stored` are the photos of the library.
    PossibleTwins(Library& library, const std::vector<StoredFile>& stored,
                  const std::vector<FoundFile>& files);

    // What to pass to add(); nothing where no other file has so many bytes. From any thread.
    std::optional<std::uint64_t> mark(std::int64_t bytes, std::span<const std::byte> front) const;

    void add(std::int64_t bytes, std::uint64_t mark) { ++marked_[{bytes, mark}]; }

    // To be asked when all were added.
    bool may_have_twin(std::int64_t bytes, std::uint64_t mark);

  private:
    void add_stored(std::int64_t bytes);

    Library& library_;
    std::unordered_map<std::int64_t, int> files_;  // how many have so many bytes
    std::unordered_map<std::int64_t, std::vector<Path>> stored_;
    std::map<std::pair<std::int64_t, std::uint64_t>, int> marked_;
    std::set<std::int64_t> unreadable_;  // of photos of the library
};

// How much of the front is to be marked.
inline constexpr std::int64_t marked_front_bytes = 16 * 1024;

}  // namespace quarterturn
