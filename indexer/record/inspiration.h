#pragma once
// A picture a client brought along: somebody else's work, kept beside her own photos and never
// among them.

#include <filesystem>
#include <string>

#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

using InspirationId = Id<struct InspirationRow>;

struct Inspiration {
    InspirationId id;
    ClientId client;
    std::string name;            // as the file was called
    std::filesystem::path path;  // in the library's folder
    std::string sha256;
    LocalTime kept_at{};

    bool operator==(const Inspiration&) const = default;
};

}  // namespace quarterturn
