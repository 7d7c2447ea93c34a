#pragma once
// What a file of a locked library holds: four bytes that say so, libsodium's header, and the bytes
// in pieces of 64 KiB, each with its seal (crypto_secretstream_xchacha20poly1305). A changed bit, a
// missing end, and pieces that changed places are noticed. A file is not tied to its name, so that
// it can be moved: that one photo does not stand in another's place is what the checksums in the
// records are for.

#include <cstdint>
#include <functional>
#include <optional>
#include <span>

#include <sodium.h>

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"

namespace quarterturn {

Bytes locked_contents(const LibraryKeys& keys, std::span<const std::byte> bytes);
// For who has no keys.
bool begin_as_locked(std::span<const std::byte> bytes);

// How many bytes a file of so many takes when it is locked.
std::int64_t locked_size(std::int64_t bytes);
// The other way round; nothing when no locked file is so long.
std::optional<std::int64_t> unlocked_size(std::int64_t locked_bytes);

// How much of a locked file holds the first so many bytes, in whole pieces.
std::int64_t front_to_read(std::int64_t bytes);

// What a file holds whose first four bytes alone are not as they were; else nothing.
std::optional<Bytes> opened_but_for_kind(const LibraryKeys& keys, std::span<const std::byte> file);

// No contents of a file locked with these keys, or no longer.
struct DamagedContents {};

// Takes a locked file in pieces of any size and gives what it held. Throws DamagedContents; what
// was given before is sound, but may not be all.
class ContentsReader {
  public:
    using Take = std::function<void(std::span<const std::byte>)>;

    ContentsReader(const LibraryKeys& keys, Take take);

    void feed(std::span<const std::byte> piece);
    void end();  // throws when there must be more

  private:
    void begin();
    void open_piece(std::size_t bytes);

    const LibraryKeys& keys_;
    Take take_;
    Bytes waiting_;
    Bytes opened_;
    crypto_secretstream_xchacha20poly1305_state state_{};
    bool begun_ = false;
    bool ended_ = false;
};

}  // namespace quarterturn
