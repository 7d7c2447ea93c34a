#pragma once
// One page of the records: 4096 bytes, of which SQLite leaves the last 40 alone (its "reserved
// bytes"). There lie the random number of this writing and the seal (XChaCha20-Poly1305), so that a
// page is as long as it was and stands where it stood. A page is tied to its number and to the kind
// of file, so none can be put in another's place; an older state of the same page can.

#include <cstdint>
#include <span>

#include "indexer/lock/library_keys.h"

namespace quarterturn {

inline constexpr int page_bytes = 4096;
inline constexpr int reserved_bytes = 40;

using Page = std::span<unsigned char, page_bytes>;

enum class PageOf : unsigned char { records = 1, log = 2 };

// `number` is the page's, or the place in the log. SQLite's reserved bytes are not kept.
void seal_page(const LibraryKeys& keys, PageOf kind, std::uint64_t number,
               std::span<const unsigned char, page_bytes> page, Page sealed);
// In its place; the reserved bytes read as zeroes. False when it is not what was sealed there.
bool open_page(const LibraryKeys& keys, PageOf kind, std::uint64_t number, Page page);

}  // namespace quarterturn
