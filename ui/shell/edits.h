#pragma once
// Undo and redo over everything she does in the window, in the order she did it. What she says of
// photos is undone by the library's own history (intake/tagging.h), which also remembers it from
// before the window was opened; other records by an Edit that knows its way back.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct Edit {
    std::string said;  // "changed the wedding of Amara and Tom"
    std::function<void(Library&)> act;
    std::function<void(Library&)> take_back;
};

// A call of intake/tagging.h, or another that makes one action of the library's history, or none.
using PhotoChange = std::function<void(Library&)>;

class Edits {
  public:
    // All throw what the library throws, and then have changed nothing here.
    void apply(Library& library, const PhotoChange& change);
    void apply(Library& library, Edit edit);
    std::optional<std::string> undo(Library& library);  // what was undone
    std::optional<std::string> redo(Library& library);
    bool can_undo(Library& library) const;
    bool can_redo(Library& library) const;
    void forget();

  private:
    // Nothing: a change that the library's history keeps.
    using Step = std::optional<Edit>;

    std::vector<Step> done_;
    std::vector<Step> undone_;
};

}  // namespace quarterturn
