#pragma once
// The keys that were unlocked in this process, and the folders that they belong to: a library, and
// what is backed up or restored of it. Nothing of it is ever written down. Safe to use from several
// threads.

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"

namespace quarterturn {

namespace key_ring {

void add(const Path& folder, KeysInHand keys);
void forget(const Path& folder);
// Of the innermost folder on the ring that a file, there already or not, lies in. Null when none.
KeysInHand of_file(const Path& file);
// Null when the key with this mark was not unlocked.
KeysInHand with_mark(const std::string& mark);

}  // namespace key_ring

}  // namespace quarterturn
