#pragma once
// Whether a file found on a card or phone is to be taken for a photo.

#include <cstdint>
#include <string>
#include <variant>

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct LeftAlone {};

struct Refused {
    std::string reason;
};

// Together with the bounds in take.cpp it keeps an import below 500 MB; chosen by measurement, see
// tests/bench.
inline constexpr std::int64_t largest_photo_file = 200'000'000;  // bytes

bool named_like_a_photo(const Path& file);
bool is_photo(FileKind kind);

// By its name, else by its first bytes. Throws DiskError.
bool may_be_photo(FileSystem& disk, const Path& file);

// What becomes of a file whose bytes are of a kind that is no photo.
std::variant<LeftAlone, Refused> no_photo(const Path& file, FileKind kind, bool empty);

// A sentence where the library's disk takes no file of that name, as some take shorter names only;
// else empty.
std::string reason_against_name(Library& library, const Path& file);

Refused too_large(std::int64_t bytes);

}  // namespace quarterturn
