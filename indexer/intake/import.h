#pragma once
// Bringing photos in: each file is read once, and the same bytes are hashed, copied, checked,
// decoded small and measured. A copy waits in incoming/ under a temporary name until it is synced
// and has been read back equal; then it is renamed, and the records of a batch are written in one
// transaction. Originals are only ever read. Memory is bounded by what a few photos take, however
// many there are.

#include <chrono>
#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"
#include "indexer/image/decode.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct ImportProgress {
    std::int64_t done = 0;   // files looked at, whatever came of them
    std::int64_t total = 0;  // files found
    Path file;               // the one at hand
    std::optional<std::chrono::seconds> left;
};

struct ImportReport {
    std::vector<PhotoId> imported;   // in the order of their moments
    std::vector<Path> already_here;  // the same bytes, under whatever name
    std::vector<Path> in_bin;        // of those: they lie in the bin, and stay there
    std::vector<PhotoId> put_back;   // of those: the library's own file was gone or had changed
    std::vector<Path> set_aside;     // where files lie now that had changed in the library
    std::vector<Path> left_alone;    // videos and other files
    std::vector<RefusedFile> refused;
    std::vector<RefusedFile> not_moved;  // files that stay in a folder that is not theirs
    bool stopped = false;  // she stopped it; what was done is kept
};

struct ImportWishes {
    std::vector<Path> sources{};  // folders, walked whole, and single files
    std::function<void(const ImportProgress&)> progress{};  // called from the calling thread
    std::stop_token stop{};
    bool remember = false;  // until all of it has come in, so that it can be gone on with
};

// New photos fall to their sittings and folders at once, and all are sorted anew at the end.
// A photo that the disk does not take is refused, and the others are taken in. Throws DiskError
// when the library itself cannot be written (a disk that is full or gone) after what was whole has
// been recorded, NoWorker likewise when nothing can open photos (indexer/worker); StoreError from
// the records, and while another program moves files in the library.
ImportReport import_photos(Library& library, Decoder& decoder, const ImportWishes& wishes);

}  // namespace quarterturn
