#pragma once

#include <utility>
#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// What photos are being brought in from, kept while that runs: where the program was ended in the
// middle of it, the next one offers to go on.
class BegunSources {
  public:
    explicit BegunSources(Path library) : library_(std::move(library)) {}

    void keep(const std::vector<Path>& sources) const;
    void forget() const;
    std::vector<Path> left() const;

  private:
    Path library_;
};

}  // namespace quarterturn
