#pragma once
// Giving a batch of whole copies their place and their records.

#include <vector>

#include "indexer/intake/incoming.h"
#include "indexer/intake/places.h"
#include "indexer/intake/take.h"
#include "indexer/intake/unfinished.h"

namespace quarterturn {

struct NewPhoto {
    FoundFile source;
    Examined examined;
};

struct SeenFile {
    FoundFile source;
    std::string sha256;
};

struct Recorded {
    Photo photo;
    bool put_back = false;  // recorded before; its file was gone from the library, or had changed
    Path set_aside{};       // where the changed one lies now
    std::string not_put_back{};  // why it could not be
};

class BatchRecorder {
  public:
    BatchRecorder(Library& library, Incoming& incoming, Unfinished& unfinished)
        : library_(library), incoming_(incoming), unfinished_(unfinished), places_(library) {}

    // Renames the copies and writes their records, and what was seen, in one transaction. Answers
    // the photos as recorded, in the same order. Throws DiskError and StoreError; nothing is
    // recorded then.
    std::vector<Recorded> record(const std::vector<NewPhoto>& batch,
                                 const std::vector<SeenFile>& seen);

  private:
    Recorded write(const NewPhoto& fresh);
    Photo complete(const NewPhoto& fresh);
    void remember_copy(const Photo& photo);
    void move_in(std::vector<Recorded>& photos);
    void move_in(Recorded& recorded);
    void put_back(Recorded& recorded);

    Library& library_;
    Incoming& incoming_;
    Unfinished& unfinished_;
    Places places_;
};

}  // namespace quarterturn
