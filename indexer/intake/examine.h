#pragma once
// All that the bytes of one photo say, whatever the file is called.

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"
#include "indexer/intake/byte_budget.h"
#include "indexer/record/photo.h"

namespace quarterturn {

struct Examined {
    Photo photo;    // without name, path, device, suggestion and tags
    Device device;  // as the file names it; empty when it does not
    std::vector<std::string> keywords;
    Bytes thumbnail;      // JPEG
    std::string refused;  // why it cannot be taken in and what to do; the rest means nothing then
};

class Examiner {
  public:
    // `decoder` is used from every thread that examines. `most_decode_bytes` bounds what decoding
    // takes on all of them together, by what it commonly takes for a picture of that size.
    Examiner(Decoder& decoder, std::int64_t most_decode_bytes)
        : decoder_(decoder), budget_(most_decode_bytes) {}

    // Safe to use from several threads at once; does not throw for bad bytes. Throws NoWorker.
    Examined examine(std::span<const std::byte> bytes, FileKind kind, const std::string& sha256);

  private:
    Decoder& decoder_;
    ByteBudget budget_;
};

}  // namespace quarterturn
