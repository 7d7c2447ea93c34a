#pragma once
// Is everything still as it was put there? Every file that the records speak of against its
// checksum, the records themselves, files that no record speaks of, and what sign-offs sealed.
// What is damaged or gone is put back from a copy that lies in the library without a record, or
// from a backup that is at hand, and what somebody moved within the library from there. What lies
// unlocked in a locked library is locked.

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/backup/file_trouble.h"
#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct VerifyWishes {
    LocalTime now{};
    bool from_start = false;  // not where it was stopped the last time
    bool heal = true;
    std::function<void(const ImportProgress&)> progress{};  // called from the calling thread
    std::stop_token stop{};
};

struct VerifyReport {
    std::int64_t files = 0;         // read now
    std::int64_t files_before = 0;  // photos read before it was stopped
    std::vector<FileTrouble> troubles{};
    std::vector<std::string> without_record{};  // files of hers, relative to the library
    bool anything_erased = false;               // ever: what is without a record may be of that
    std::vector<std::string> to_be_erased{};  // sentences: files of an erasure that is not finished
    // Sentences: files that the lock does not hold though it is on, or holds though it was taken
    // off.
    std::vector<std::string> lock{};
    std::vector<std::string> records{};  // sentences: what is wrong with the records
    std::vector<std::string> seals{};    // sentences: signed-off looks that lack a photo of theirs
    bool stopped = false;                // what was read counts; run again, it goes on

    // Nothing needs attention: neither now, nor a look at what was mended.
    bool whole() const;
};

// Throws StoreError and DiskError where the library itself cannot be read, or its disk is full.
VerifyReport verify(Library& library, const VerifyWishes& wishes);

}  // namespace quarterturn
