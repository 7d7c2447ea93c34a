#pragma once

#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// What photos are being brought in from, kept while that runs: where the program was ended in the
// middle of it, the next one offers to go on.
class BegunSources {
  public:
    explicit BegunSources(const Path& library) : library_(library) {}

    void keep(const std::vector<Path>& sources) const;
    void forget() const;
    std::vector<Path> left() const;

  private:
    const Path& library_;
};

}  // namespace quarterturn
