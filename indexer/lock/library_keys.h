#pragma once
// The keys of one locked library. All follow from one random data key of 256 bits (libsodium's
// crypto_kdf), which never changes while the library stays locked: a new passphrase wraps the same
// key anew (lock_file.h).

#include <memory>
#include <string>

#include "indexer/lock/secret.h"

namespace quarterturn {

class LibraryKeys {
  public:
    explicit LibraryKeys(Secret data_key);

    const Secret& data_key() const { return data_key_; }
    const Secret& contents() const { return contents_; }        // of files
    const Secret& name_marks() const { return name_marks_; }    // of names of files and folders
    const Secret& name_stream() const { return name_stream_; }  // of the same
    const Secret& records() const { return records_; }          // of the pages of the records
    // Tells this key from every other, and tells nothing of it. Hex.
    const std::string& mark() const { return mark_; }

  private:
    Secret data_key_;
    Secret contents_;
    Secret name_marks_;
    Secret name_stream_;
    Secret records_;
    std::string mark_;
};

using KeysInHand = std::shared_ptr<const LibraryKeys>;

KeysInHand new_library_keys();

}  // namespace quarterturn
