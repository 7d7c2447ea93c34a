#pragma once
// What is seen of a file on a card without reading all of it.

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include "indexer/intake/photo_file.h"
#include "indexer/intake/twins.h"
#include "indexer/intake/walk.h"
#include "indexer/metadata/read.h"

namespace quarterturn {

struct Glimpse {
    std::optional<LocalTime> taken;
    Device device;
    std::optional<std::uint64_t> mark;  // nothing where no other file can be the same
    std::string sha256;                 // empty where no other file is the same by its mark
};

using Glimpsed = std::variant<LeftAlone, Refused, Glimpse>;

// Safe to use from several threads at once.
class Glancer {
  public:
    Glancer(Library& library, const PossibleTwins& twins)
        : library_(library), disk_(library.disk()), twins_(twins) {}

    // Of each of the files, in their order. Those whose metadata lies at the front are read by one
    // worker at once.
    std::vector<Glimpsed> glance(std::span<const FoundFile> files) const;
    Glimpsed with_checksum(const FoundFile& found, Glimpse glimpse) const;

  private:
    struct Front {
        Bytes bytes;
        std::optional<std::size_t> header;  // how many of them hold all metadata
    };
    using Opened = std::variant<LeftAlone, Refused, Front>;

    Opened open(const FoundFile& found) const;
    static std::vector<std::optional<FileMetadata>> said_in_headers(
        const std::vector<Opened>& opened);
    Glimpsed look_at(const FoundFile& found, const Front& front,
                     std::optional<FileMetadata> said) const;
    FileMetadata what_is_said(const Path& file, const Front& front) const;

    Library& library_;
    FileSystem& disk_;
    const PossibleTwins& twins_;
};

}  // namespace quarterturn
