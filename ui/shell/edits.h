#pragma once
// What she does in the window and can undo: the library's history (indexer/store/history.h) keeps
// it, in the order she did it, and remembers it from before the window was opened.

#include <functional>
#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

struct Edit {
    std::string said;  // "changed the wedding of Amara and Tom"
    std::function<void(Library&)> act;
};

// Something that makes an action of the library's history by itself, or none.
using PhotoChange = std::function<void(Library&)>;

}  // namespace quarterturn
