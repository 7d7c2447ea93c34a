#pragma once

#include "indexer/lock/lock_file.h"

namespace quarterturn {

// What stands behind a wrapping, so that one cannot be put in the other's place.
enum class WrappedBy : unsigned char { passphrase = 1, recovery_key = 2 };

WrappedKey wrap(const LibraryKeys& keys, const Secret& wrapping_key, WrappedBy by);
// Null when it is another key.
KeysInHand unwrap(const WrappedKey& wrapped, const Secret& wrapping_key, WrappedBy by);

// Throws LockError when there is not enough memory.
Secret wrapping_key_of(std::string_view passphrase, const LockFile& lock);
Secret wrapping_key_of(const Secret& recovery_key);

}  // namespace quarterturn
