#include "indexer/disk/reads_back.h"

#include <cstring>

namespace quarterturn {

bool reads_back_as(FileSystem& disk, const Path& file, std::span<const std::byte> bytes) {
    bool same = true;
    disk.read_back(file, [&](std::span<const std::byte> piece) {
        same = same && piece.size() <= bytes.size() &&
               std::memcmp(piece.data(), bytes.data(), piece.size()) == 0;
        if (same) bytes = bytes.subspan(piece.size());
    });
    return same && bytes.empty();
}

}  // namespace quarterturn
