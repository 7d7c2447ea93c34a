#pragma once
// A document with photos of clients, made for others: it leaves as one file, when all its photos
// may go.

#include <functional>
#include <string>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/disk/refused_file.h"
#include "indexer/record/ledger.h"
#include "indexer/sheet/page.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct PassOnWishes {
    Use use = Use::consultation;
    Path file;  // what is there is written over
};

struct PassedOn {
    std::vector<RefusedFile> against;  // photos, by name; nothing was written when there are any
    std::vector<ExportId> exports;     // in the ledger
};

// Looks for faces where nobody has yet, and asks the gate about every photo on the pages. `draw` is
// called only when all of them may go; the ledger has them before the file is there. Throws
// StoreError, also where no photo stands on the pages, and DiskError.
PassedOn pass_on(Library& library, Decoder& decoder, const Document& document,
                 const std::function<std::vector<std::byte>()>& draw, const PassOnWishes& wishes,
                 LocalTime now);

}  // namespace quarterturn
