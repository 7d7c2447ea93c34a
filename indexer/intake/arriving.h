#pragma once
// Watching a folder while a sitting runs: photos arrive in it through a cable, a card or a sync
// service, each written bit by bit. A file is finished when it is as large, and was changed as long
// ago, at two looks one after the other.

#include <map>

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

}  // namespace quarterturn
