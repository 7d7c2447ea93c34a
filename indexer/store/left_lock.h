#pragma once
// lock.left.json, which may be the only key of something: what is to be said of it, and when it is
// not touched.

#include <string>
#include <vector>

#include "indexer/lock/lock_file.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Whether unlocking this library left it, and nobody put it there: its records say so.
bool was_left_by_unlocking(const Path& folder, const LockFile& left);

// Sentences. What is missing is as recorded_and_missing tells it.
std::string missing_while_unlocking(const std::vector<std::string>& missing);
std::string left_lock_of_another();
// Of a library that has no lock, and in which nothing is locked.
std::string why_left_lock_is_there(FileSystem& disk, const Path& folder, const LockFile& left);

// Throw StoreError, LockError and DiskError. Where the library is not locked, and nothing in it
// opens with the keys of a lock.left.json that unlocking did not leave.
void refuse_left_lock_of_another(FileSystem& disk, const Path& folder, const KeysInHand& keys);
// Where another lock's lock.left.json lies beside the lock, whose key may have to be kept there.
void refuse_second_left_lock(FileSystem& disk, const Path& folder, const LockFile& lock);

}  // namespace quarterturn
