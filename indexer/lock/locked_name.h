#pragma once
// The names of files and folders in a locked library, since they say who the clients are. The same
// name in the same folder is always locked alike, so that a file is found without a list: a keyed
// BLAKE2b mark of folder and name, then the name, encrypted with XChaCha20 from that mark. Written
// in small letters and figures (RFC 4648's base 32), which disks that do not tell small letters
// from capitals keep apart. How long a name is can be seen.

#include <optional>
#include <string>

#include "indexer/lock/library_keys.h"

namespace quarterturn {

// Longer names have no locked name that fits into the 255 bytes that disks allow.
inline constexpr std::size_t longest_name_to_lock = 143;

// `folder` is the path below the library in plain words. Throws std::length_error when the name is
// too long.
std::string lock_name(const LibraryKeys& keys, const std::string& folder, const std::string& name);
// Nothing when it is no locked name of that folder.
std::optional<std::string> unlock_name(const LibraryKeys& keys, const std::string& folder,
                                       const std::string& locked);
// Whether a locked name could be written so, for who has no keys.
bool looks_locked(const std::string& name);

}  // namespace quarterturn
