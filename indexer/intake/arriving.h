#pragma once
// Watching a folder while a sitting runs: photos arrive in it through a cable, a card or a sync
// service, each written bit by bit. A file is finished when it is as large, and was changed as long
// ago, at two looks one after the other.

#include <chrono>
#include <map>

#include "indexer/intake/import.h"
#include "indexer/intake/walk.h"

namespace quarterturn {

class ArrivingFiles {
  public:
    explicit ArrivingFiles(std::vector<Path> sources) : sources_(std::move(sources)) {}

    // Looks once, and answers the files that are finished now and not settled yet. Does not throw:
    // what cannot be read now may be at the next look.
    std::vector<Path> look(Library& library);

    // These were dealt with: they are answered again only when they are written anew.
    void settle(const std::vector<Path>& files);

    // Whether the last look saw files that may not be finished yet.
    bool unfinished() const { return unfinished_; }

  private:
    struct Seen {
        FileState state;
        bool settled = false;
    };

    std::vector<Path> sources_;
    std::map<Path, Seen> seen_;
    bool unfinished_ = false;
};

// Between two looks at a file that may still be written.
inline constexpr std::chrono::seconds between_looks{2};

// Looks once, and brings in what has arrived; `wishes` name no sources. Throws as import_photos().
ImportReport import_arrived(Library& library, Decoder& decoder, ArrivingFiles& arriving,
                            ImportWishes wishes);

}  // namespace quarterturn
