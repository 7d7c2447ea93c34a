#pragma once
// That something was erased: the fact and the day, and nothing of whom.

#include <cstdint>
#include <string>

#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

using ErasureId = Id<struct ErasureRow>;

struct Erasure {
    ErasureId id;
    Date on{};
    std::int64_t photos = 0;
    std::int64_t looks = 0;
    bool finished = false;  // false while files of it may be left on the disk

    bool operator==(const Erasure&) const = default;
};

// A text of others that names her.
struct NamedPlace {
    std::string place;  // "the note of the client Bea Holm"
    std::string said;   // her name as it stands there
    bool goes = false;        // the name is taken out; else it stays for her to look at
    bool as_it_came = false;  // it stays for good: a file is called so
    bool signed_off = false;  // of a look that is: it will show as changed since where it goes

    bool operator==(const NamedPlace&) const = default;
};

}  // namespace quarterturn
