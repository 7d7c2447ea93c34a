#pragma once
// What every command is given: the library, and whether a program is listening.

#include <memory>
#include <optional>
#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

struct GlobalWishes {
    std::string library;  // empty: QUARTERTURN_LIBRARY, else Quarterturn in the home folder
    bool json = false;
};

class Session {
  public:
    explicit Session(GlobalWishes wishes) : wishes_(std::move(wishes)) {}

    bool json() const { return wishes_.json; }
    Path folder() const;
    // Opened when first asked for. Throws StoreError when there is none.
    Library& library();

  private:
    GlobalWishes wishes_;
    std::optional<Library> library_;
};

}  // namespace quarterturn
