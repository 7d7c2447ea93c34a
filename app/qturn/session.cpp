#include "app/qturn/session.h"

#include <cstdlib>

#include "indexer/disk/clock.h"
#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/erase.h"

#include "app/qturn/reply.h"

namespace quarterturn {
namespace {

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string{} : std::string(value);
}

// What an interrupted erasure has left, and what has lain in the bin for long enough. Where it
// cannot be finished yet, the next command tries.
void go_on_erasing(Library& library) try {
    finish_erasures(library);
    let_go_of_bin(library, date_of(local_now()));
} catch (const std::runtime_error&) {
    return;
}

}  // namespace

Path Session::folder() const {
    if (!wishes_.library.empty()) return wishes_.library;
    if (const std::string named = environment("QUARTERTURN_LIBRARY"); !named.empty()) return named;
    if (const std::string home = environment("HOME"); !home.empty()) {
        return Path(home) / "Quarterturn";
    }
    throw WrongUse("Which library? Name its folder with --library.");
}

Library& Session::library() {
    if (!library_) {
        if (!real_file_system().exists(folder())) {
            throw StoreError("There is no library in " + folder().string() +
                             ". Make one with: qturn init --library FOLDER, or name another with "
                             "--library.");
        }
        library_ = Library::open(folder());
        go_on_erasing(*library_);
    }
    return *library_;
}

}  // namespace quarterturn
