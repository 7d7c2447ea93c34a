#pragma once
// The names of files and folders in a locked library, since they say who the clients are. The same
// name in the same folder is always locked alike, so that a file is found without a list: a keyed
// BLAKE2b mark of folder and name, then the name, encrypted with XChaCha20 from that mark. Written
// in small letters and figures (RFC 4648's base 32), which disks that do not tell small letters
// from capitals keep apart. How long a name is can be seen.
//
// So written, a name grows, and disks allow 255 bytes: the front of a longer one is the name of a
// folder, with a hyphen at its end, in which the file or folder lies under the rest.

#include <optional>
#include <string>

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"

namespace quarterturn {

// `folder` is the path below the library in plain words.
std::string lock_name(const LibraryKeys& keys, const std::string& folder, const std::string& name);
// Nothing when it is no locked name of that folder.
std::optional<std::string> unlock_name(const LibraryKeys& keys, const std::string& folder,
                                       const std::string& locked);
// Where what is called so lies in its folder: one name, or the front of it and the rest.
Path place_of_locked_name(const std::string& locked);
bool is_front_of_locked_name(const std::string& name);
// Of such a front, with what lies in it.
std::string joined_locked_name(const std::string& front, const std::string& rest);
// Whether a locked name could be written so, for who has no keys.
bool looks_locked(const std::string& name);

}  // namespace quarterturn
