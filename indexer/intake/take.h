#pragma once
// What one thread does with one file: read it once, tell whether it is a photo, hash, decode and
// measure it, and lay a checked copy into incoming/.

#include <future>
#include <string>
#include <variant>

#include "indexer/intake/content_claims.h"
#include "indexer/intake/incoming.h"
#include "indexer/intake/photo_file.h"
#include "indexer/intake/stored_copies.h"
#include "indexer/intake/walk.h"

namespace quarterturn {

struct AlreadyHere {
    std::string sha256;
    std::optional<FoundFile> copy{};  // the library's, where it was read to be sure
};

// A photo's content, which another file may share. Waiting for `examined` ends by itself: the
// thread that claimed the content is at work on it. It throws DiskError when no copy could be made.
struct Content {
    std::string sha256;
    std::shared_future<Examined> examined;
};

using Taken = std::variant<LeftAlone, Refused, AlreadyHere, Content>;

class Taker {
  public:
    Taker(Library& library, Decoder& decoder, const StoredCopies& copies, ContentClaims& claims,
          Incoming& incoming);

    // Safe to use from several threads at once.
    Taken take(const FoundFile& found);

  private:
    Taken take_bytes(const Path& file, const Bytes& bytes);
    void keep(std::promise<Examined>& promise, const Bytes& bytes, FileKind kind,
              const std::string& sha256);

    Library& library_;
    const StoredCopies& copies_;
    ContentClaims& claims_;
    Incoming& incoming_;
    Examiner examiner_;
    ByteBudget file_budget_;
};

}  // namespace quarterturn
